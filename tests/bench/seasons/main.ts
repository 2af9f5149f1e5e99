/**
 * Simulates seasons through the whole path, rows as cells in and words out, and prints how the season
 * hold, readiness, expected speed and the strength estimate do, beside hand rules, an EWMA and a test
 * that knows everything. Run with `npm run bench:seasons`, or `npm run bench:seasons -- 40` for forty
 * squads of twenty instead of the usual number. Prints markdown.
 */
import { figures } from "./figures";
import { flagged } from "./flags";
import { brokenTable, ratesTable } from "./half-fallen";
import { linesTable } from "./lines-table";
import { readinessDays } from "./readiness-days";
import { calledBy, honesty, saidSeasons, tableRows, usualMix } from "./season-table";
import { markdownTable, percent, percents } from "./table-text";
import { noticed, noticedWithin, visibleFalls } from "./visible-falls";
import { usualWorld } from "./world";

/** Not among the seeds that any constant was chosen with. */
const seeds = {
  usual: 1_240_000,
  readiness: 850_000,
  broken: 1_260_000,
  rates: 1_300_000,
  visible: 1_310_000,
  lines: 3_300_000,
};

const squads = Number(process.argv[2] ?? 150);
if (!(Number.isInteger(squads) && squads > 0)) {
  process.stderr.write(
    "Give the number of squads as a whole number: npm run bench:seasons -- 40\n",
  );
  process.exit(2);
}
const brokenSquads = Math.ceil(squads / 5);
const print = (...lines: readonly string[]) => process.stdout.write(`${lines.join("\n")}\n`);

const seasons = saidSeasons(usualWorld, usualMix(usualWorld), squads, seeds.usual, {
  withLines: true,
});
const calmSeasons = seasons("calm");
print(
  `${squads * usualWorld.athletes} seasons in ${squads} squads of ${usualWorld.athletes}, 16 to 20 weeks of one or two sessions, a tenth missed; ${calmSeasons.length} calm, ${seasons("step", -5).length} with a lasting fall of 5 %, ${seasons("step", -3).length} of 3 % and ${seasons("step", -8).length} of 8 %. A fall found within 4 / 6 / 8 sessions, percent of seasons (median sessions):`,
  "",
  ...markdownTable(
    [
      "",
      "calm seasons flagged, limit in use",
      "same, limit here",
      "3 % fall",
      "5 % fall",
      "8 % fall",
    ],
    tableRows(seasons, usualWorld).map(({ name, calmAsUsed, calmHere, falls }) => [
      name,
      percent(calmAsUsed, 1),
      percent(calmHere, 1),
      ...falls.map(
        ({ found, median }) => `${percents(found)} (${Number.isFinite(median) ? median : "–"})`,
      ),
    ]),
  ),
  "",
);

print(
  ...markdownTable(
    ["false flags asked for", "calm seasons flagged", "5 % fall found within 4/6/8"],
    ratesTable(Math.ceil(squads / 3), seeds.rates),
  ),
  "",
);

const truths = honesty(seasons);
const shown = visibleFalls(usualWorld, brokenSquads, seeds.visible);
const ready = readinessDays(usualWorld, squads, seeds.readiness);
const onCalm = figures(calmSeasons, () => usualWorld.baselineSessions);
const afterFall = figures(seasons("step", -5), ({ truth }) => truth.onset);
const onAll = figures(
  [
    calmSeasons,
    ...[-3, -5, -8, 5].map((size) => seasons("step", size)),
    seasons("slide", -5),
  ].flat(),
  () => usualWorld.baselineSessions,
);
print(
  ...markdownTable(
    ["this product besides", ""],
    [
      ["calm seasons called rising", percent(flagged(calledBy(calmSeasons, "rising")), 1)],
      ["onset of a step within three sessions", percent(truths.onsetNear)],
      ["wrong sign", percent(truths.wrongSign, 1)],
      [
        `a fall just as large as the loss that would show, noticed within ${noticedWithin} sessions`,
        percent(noticed(shown)),
      ],
      ["rise of 5 % found within 8 sessions", percent(truths.riseFound)],
      ["slide to 5 % over eight sessions found within 8", percent(truths.slideFound)],
      ["novices rising .3 % a session called rising", percent(truths.noviceRising)],
      ["the same called slipping", percent(truths.noviceSlipping, 1)],
      ["any day of a calm season called below usual, ten days behind", percent(ready.anyDay, 1)],
      ["the same, days truly off left out", percent(ready.ordinary, 1)],
      ["very bad days called below usual", percent(ready.veryBad)],
    ],
  ),
  "",
  ...markdownTable(
    ["", "all seasons", "calm seasons", "after a fall of 5 %"],
    [
      row("expected speed, error (m/s)", ({ speedError }) => speedError.toFixed(3)),
      row("its 90 % interval holds the new set", ({ speedCovered }) => percent(speedCovered)),
      row("strength, error of every line", ({ strengthError }) => percent(strengthError, 1)),
      row("strength, error where shown", ({ shownError }) => percent(shownError, 1)),
      row("its 90 % interval holds the true one", ({ shownCovered }) => percent(shownCovered)),
      row("strength refused", ({ refused }) => percent(refused)),
    ],
  ),
  "",
);

function row(name: string, figure: (of: typeof onCalm) => string): readonly string[] {
  return [name, figure(onAll), figure(onCalm), figure(afterFall)];
}

print(...linesTable("rows known", usualWorld, Math.ceil(squads / 3), seeds.lines), "");

print(
  ...markdownTable(
    ["where something does not hold", "calm seasons flagged", "5 % fall found within 4/6/8"],
    brokenTable(brokenSquads, seeds.broken),
  ),
);
