import { athleteStates } from "../../../src/actions/squad/athlete-states";
import { namesOf } from "../../../src/actions/squad/squad-view";
import { stateOfSquad } from "../../../src/actions/squad/state-of-squad";
import { proposeLine } from "../../../src/coaching/next-week/propose-line";
import { athleteNamed } from "../../../src/coaching/record/athlete-named";
import { rowsByAthlete } from "../../../src/coaching/series/rows-by-athlete";
import { sampleClub } from "../../actions/sample-club";
import { clubRuns, day, race, session, squadRows } from "../next-week/written-squad";

test("an athlete's rows are that athlete's, in their order, by any spelling of the name", () => {
  const of = (name: string) =>
    session(name, "2026-05-05", { sets: 2, reps: 5, loadKg: 70, markerKg: 55 });
  const spelt = of("ilka  BRANDMOOR");
  const runs = clubRuns("Wren Oldacre", day("2026-05-04"));
  const races = [race("2026-05-10", 10)];
  const availability = ["Ilka Brandmoor", "Wren Oldacre"].map((athlete) => ({
    ...{ row: 2, athlete, mayDo: "modified" as const, by: "", site: "", pain: null, note: "" },
    ...{ from: day("2026-05-04"), until: null },
  }));
  const sets = [...of("Ilka Brandmoor"), ...of("Wren Oldacre"), ...spelt];
  const rowsOf = rowsByAthlete(squadRows({ sets, runs, races, availability }));
  const ilka = rowsOf(" Ilka Brandmoor");
  expect(ilka.sets).toEqual([...of("Ilka Brandmoor"), ...spelt]);
  expect(ilka.runs).toEqual([]);
  expect(ilka.availability).toEqual(availability.slice(0, 1));
  expect(rowsOf("Wren Oldacre").runs).toEqual(runs);
  // A race may be everybody's: who runs it is asked where it matters.
  expect(ilka.races).toBe(races);
  expect(rowsOf("Bea Lindqvale")).toEqual(squadRows({ races }));
});

test("the whole club's week is proposed from each athlete's own rows as it is from all rows", () => {
  const state = stateOfSquad(sampleClub(), day("2026-06-28"));
  const { rows } = state.read;
  const rowsOf = rowsByAthlete(rows);
  const stateOf = athleteStates(state);
  const names = namesOf(state);
  const line = (name: string, from: typeof rows) =>
    proposeLine({
      athlete: athleteNamed(rows.athletes, name) ?? null,
      name,
      state: stateOf(name),
      rows: from,
      unit: state.numbers.unit,
      monday: day("2026-06-29"),
      asOf: state.asOf,
    });
  const told = (from: (name: string) => typeof rows) =>
    names.map((name) => JSON.stringify(line(name, from(name))));
  expect(names.length).toBeGreaterThan(10);
  expect(told(rowsOf)).toEqual(told(() => rows));
  const all = names.map(rowsOf);
  for (const table of ["sets", "jumps", "diary", "runs", "availability"] as const)
    expect(all.flatMap((own) => [...own[table]]).length).toBeGreaterThan(0);
  expect(all.flatMap(({ runs }) => [...runs])).toHaveLength(rows.runs.length);
});
