import { proposeLine } from "../../../src/coaching/next-week/propose-line";
import { lineReasonWords } from "../../../src/words/week";
import { athlete, day, race, session, squadRows, state } from "./written-squad";

const name = "Ilka Brandmoor";
const tuesday = day("2026-04-07");
const iso = (days: number) => new Date(86_400_000 * (tuesday + days)).toISOString().slice(0, 10);
type Week = readonly [sets: number, reps: number, loadKg: number];
const next = (weeks: readonly Week[], over: object = {}, rows: object = {}) => {
  const monday = tuesday - 1 + 7 * weeks.length;
  const sets = weeks.flatMap(([count, reps, loadKg], week) =>
    [0, 2].flatMap((days) =>
      session(name, iso(7 * week + days), { sets: count, reps, loadKg, markerKg: 50 }),
    ),
  );
  const line = proposeLine({
    athlete: athlete(name),
    name,
    state: state(name, { strengthLowKg: 140 }),
    rows: squadRows({ sets, ...rows }),
    monday,
    asOf: monday - 1,
    ...over,
  });
  const [first] = line.sessions;
  const said = line.reasons.map(lineReasonWords);
  return [`${first!.sets}×${first!.reps} ${first!.loadKg}`, ...said];
};
const asEver = "4 sets, as there never were more in twelve weeks.";
const fours: readonly Week[] = [
  [4, 5, 70],
  [4, 5, 70],
];

test("whoever does four sets time and again is planned four where the rotation has five", () => {
  expect(next(fours)).toEqual(["4×5 70", "Hold: week 3 of 3.", asEver]);
  // Of three fives the rotation's next is five threes: four of them, and with four done it goes on.
  const threes: readonly Week[] = [...fours, [3, 5, 72.5], [3, 5, 72.5], [3, 5, 72.5]];
  expect(next(threes)[0]).toBe("4×3 75");
  const last: Week = [4, 3, 75];
  expect(next([...threes, last])).toEqual(["4×3 75", "Hold: week 2 of 3.", asEver]);
  expect(next([...threes, last, last, last])).toEqual([
    "3×3 77.5",
    "Moved well, volume done, speed held: a step on, 75 to 77.5 kg.",
  ]);
});

test("one session of five within twelve weeks, or fewer than four of four, and five are planned as ever", () => {
  expect(next([[5, 5, 67.5], ...fours])[0]).toBe("5×5 70");
  expect(next([[4, 5, 70]])[0]).toBe("5×5 70");
  expect(
    next([
      [3, 5, 70],
      [3, 5, 70],
      [3, 5, 70],
    ])[0],
  ).toBe("5×3 72.5");
});

test("five sets on the last day of twelve weeks ago are of no season's habit any more", () => {
  const since = (weeks: number): Week[] => [
    [5, 5, 67.5],
    ...Array<Week>(weeks).fill([4, 5, 67.5]),
    ...fours,
  ];
  // Thursday to Thursday: 84 days, and 77.
  expect([next(since(10))[0], next(since(9))[0]]).toEqual(["4×5 70", "5×5 70"]);
});

test("a block the coach sets is done in full, and a race's week halves the four", () => {
  expect(next(fours, { change: { block: { sets: 5, reps: 5 } } })).toEqual([
    "5×5 70",
    "Set by you; 4×5 was proposed. Its reason: Hold: week 3 of 3.",
  ]);
  const races = [race("2026-04-26", 10)];
  expect(next(fours, {}, { races })[0]).toBe("2×5 70");
});
