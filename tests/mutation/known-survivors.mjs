/**
 * Faults that no test can notice, each with the reason: file under src/, what stands there, what the
 * fault makes of it, on one line; only what stands once in its file can be told so. A fault that a test could notice has no place here.
 */
const unnoticed = [
  [
    "coaching/hold/season-notes.ts",
    "first === undefined || last === undefined",
    "false",
    "without sessions the weeks are no number, which is past no limit",
  ],
  [
    "coaching/hold/value-change.ts",
    "change === null",
    "false",
    "a change and a value now are missing together",
  ],
  [
    "coaching/hold/hold-measure.ts",
    "s > baselineSessions",
    "true",
    "what is read begins after the baseline whatever place is given",
  ],
  [
    "coaching/hold/squad-seasons.ts",
    "height === null",
    "false",
    "there is no test of that name: no days either",
  ],
  [
    "coaching/hold/step-evidence.ts",
    "recentWeight > 0",
    "true",
    "a mean of no rows is no number, which lies on neither side",
  ],
  [
    "coaching/hold/step-evidence.ts",
    "-2",
    "+2",
    "the stream is told only of evidence, which sets it",
  ],
  [
    "coaching/hold/speed-measure.ts",
    "reference > 0",
    "reference >= 0",
    "a line that meets zero at just that load, to the last digit",
  ],
  [
    "coaching/bar-speed/line-fit.ts",
    "1e-9 * w",
    "1e-9 / w",
    "loads either spread or do not: both bounds lie between",
  ],
  [
    "coaching/jumps/test-day.ts",
    "difference > 1e-6",
    "difference >= 1e-6",
    "no two heights lie just a hundred-millionth of a metre apart",
  ],
  [
    "coaching/jumps/test-day.ts",
    "Math.abs(steps - Math.round(steps)) < 0.01",
    "Math.abs(steps - Math.round(steps)) <= 0.01",
    "no height lies just a hundredth of a step off, to the last digit",
  ],
  ["coaching/readiness/squad-spreads.ts", '"squad"', '""', "the one thing kept may have any name"],
  [
    "coaching/hold/setting-notes.ts",
    "setting === usual",
    "false",
    "the usual setting differs in nothing, which is asked too",
  ],
  [
    "coaching/hold/hold-measure.ts",
    "measure.change === null",
    "false",
    "a change and its error are missing together",
  ],
  [
    "coaching/hold/serial-correlation.ts",
    "correlation <= 0",
    "correlation < 0",
    "a correlation of nothing is shrunk to nothing",
  ],
  [
    "coaching/diary/diary-item.ts",
    "done.length === 0",
    "false",
    "without runs there is no first day to begin from",
  ],
  [
    "coaching/availability/who-may.ts",
    "athlete.birthYear !== null",
    "true",
    "without a birth year the age is that of year nought",
  ],
  [
    "coaching/blocks/repetition-load.ts",
    "reps < chartReps",
    "reps <= chartReps",
    "a share above the chart's last row is found before its end",
  ],
  [
    "coaching/series/in-order.ts",
    "place.row < row",
    "place.row <= row",
    "no two rows stand in one place",
  ],
  [
    "coaching/series/in-order.ts",
    "compare(rows[i - 1]!, rows[i]!) > 0",
    "true",
    "rows in order are only put in order again",
  ],
  [
    "coaching/series/season-start.ts",
    "sorted.length - 1",
    "sorted.length + 1",
    "past the last day there is no gap",
  ],
];

/** The reason a fault cannot be noticed; undefined when none is known. */
export function reasonOf(fileName, from, to) {
  const known = unnoticed.find(
    ([file, was, is]) => fileName === `src/${file}` && was === from && is === to,
  );
  return known?.[3];
}
