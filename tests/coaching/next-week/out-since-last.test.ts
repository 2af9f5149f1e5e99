import { proposeLine } from "../../../src/coaching/next-week/propose-line";
import type { AvailabilitySpell } from "../../../src/coaching/record/availability-spell";
import { lineReasonWords } from "../../../src/words/week";
import { athlete, clubRuns, day, movesAt, session, squadRows, state } from "./written-squad";

const monday = day("2026-05-04");
const name = "Tomas Reyerson";
/** Three clean weeks of 3×5 at 85 kg, the last session on Thu 30 April: a step on is due. */
const weeks = ["2026-04-14", "2026-04-16", "2026-04-21", "2026-04-23", "2026-04-28", "2026-04-30"];
const line = (spells: readonly Partial<AvailabilitySpell>[]) =>
  proposeLine({
    athlete: athlete(name),
    name,
    state: state(
      name,
      movesAt((kg) => 0.28 + 1.45 * (1 - kg / 112)),
    ),
    rows: squadRows({
      sets: weeks.flatMap((iso) =>
        session(name, iso, { sets: 3, reps: 5, loadKg: 85, markerKg: 67.5 }),
      ),
      runs: clubRuns(name, monday),
      availability: spells.map((spell) => ({
        row: 2,
        athlete: name,
        from: day("2026-05-04"),
        until: day("2026-05-06"),
        mayDo: "out",
        by: "MG",
        site: "",
        pain: null,
        note: "stomach bug",
        ...spell,
      })),
    }),
    monday,
    asOf: day("2026-05-03"),
  });
const planOf = (found: ReturnType<typeof line>) => {
  const { sets, reps, loadKg } = found.sessions[0]!;
  return `${sets}×${reps} ${loadKg}`;
};

test("three days out with a stomach bug: the step that was due waits, and it is said why", () => {
  expect(planOf(line([]))).toBe("5×3 87.5");
  const back = line([{}]);
  expect(planOf(back)).toBe("3×5 85");
  expect(back.reasons.map(lineReasonWords)[0]).toBe(
    "Out since the last session: the step waits a week.",
  );
});

test("a spell that began before the last session and went on after it holds the step as well", () => {
  expect(planOf(line([{ from: day("2026-04-29"), until: day("2026-05-02") }]))).toBe("3×5 85");
});

test("neither an earlier spell, nor another's, nor one to come, nor a modified one over holds it", () => {
  const goesOn = (spell: Partial<AvailabilitySpell>) => planOf(line([spell])) === "5×3 87.5";
  expect(goesOn({ from: day("2026-04-24"), until: day("2026-04-27") })).toBe(true);
  expect(goesOn({ from: day("2026-04-24"), until: day("2026-04-30") })).toBe(true);
  expect(goesOn({ athlete: "Ilka Brandmoor" })).toBe(true);
  expect(goesOn({ from: day("2026-05-09"), until: day("2026-05-12") })).toBe(true);
  expect(goesOn({ mayDo: "modified", from: day("2026-05-01"), until: day("2026-05-03") })).toBe(
    true,
  );
});
