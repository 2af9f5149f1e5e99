import { heaviestOfDay } from "../../../../src/coaching/next-week/present-step/heaviest-of-day";
import { proposeLine } from "../../../../src/coaching/next-week/propose-line";
import { lineReasonWords } from "../../../../src/words/week";
import { athlete, day, session, squadRows, state } from "../written-squad";

const name = "Ilka Brandmoor";
const at = (iso: string, hour: number, sets: number, reps: number, loadKg: number) =>
  session(name, iso, { sets, reps, loadKg, markerKg: 50 }).map((set) => ({
    ...set,
    minute: 60 * hour,
  }));
const tuesday = "2026-05-05";
const loads = (...sessions: ReturnType<typeof at>[]) =>
  heaviestOfDay(sessions.flat())
    .filter(({ kind }) => kind === "work")
    .map(({ loadKg }) => loadKg);

test("of a light session in the morning and a heavy one in the evening the heavy one counts, and the other way round", () => {
  const [light, heavy] = [at(tuesday, 7, 2, 3, 60), at(tuesday, 18, 3, 5, 85)];
  expect(loads(light, heavy)).toEqual([85, 85, 85]);
  expect(loads(at(tuesday, 7, 3, 5, 85), at(tuesday, 18, 2, 3, 60))).toEqual([85, 85, 85]);
  // What counts is the work: neither a heavier warm-up single nor sets of which nobody wrote a load.
  const single = { ...at(tuesday, 7, 1, 1, 90)[1]!, kind: "warm-up" as const };
  expect(loads([single], light, heavy)).toEqual([85, 85, 85]);
  const unwritten = light.map((set) => ({ ...set, loadKg: null }));
  expect(loads(unwritten, heavy)).toEqual([85, 85, 85]);
  // Alike they are the same session twice, not one of twice the sets.
  const [morning, evening] = [at(tuesday, 7, 3, 5, 85), at(tuesday, 18, 3, 5, 85)];
  expect(heaviestOfDay([...morning, ...evening])).toEqual(morning);
});

test("within three hours, or without times, they are one session; a marker of the morning is the evening's", () => {
  const two = (hour: number) => loads(at(tuesday, 15, 1, 5, 60), at(tuesday, hour, 1, 5, 85));
  expect([two(18), two(19)]).toEqual([[60, 85], [85]]);
  const untimed = [at(tuesday, 7, 1, 5, 60), at(tuesday, 18, 1, 5, 85)].flat();
  expect(heaviestOfDay(untimed.map((set) => ({ ...set, minute: null })))).toHaveLength(4);
  const [marker] = at(tuesday, 7, 1, 5, 85);
  const [, work] = at(tuesday, 18, 1, 5, 85);
  expect(heaviestOfDay([marker!, work!])).toEqual([marker, work]);
});

test("a week goes on from the heavy session's block and load, and says so", () => {
  const sets = [
    ...["2026-04-28", "2026-04-30"].flatMap((iso) => at(iso, 18, 3, 5, 85)),
    ...at(tuesday, 7, 3, 3, 60),
    ...at(tuesday, 18, 3, 5, 85),
  ];
  const { sessions, reasons } = proposeLine({
    athlete: athlete(name),
    name,
    state: state(name),
    rows: squadRows({ sets }),
    monday: day("2026-05-11"),
    asOf: day("2026-05-06"),
  });
  expect(sessions.map((one) => [one.sets, one.reps, one.loadKg])).toEqual([
    [3, 5, 85],
    [3, 5, 85],
  ]);
  expect(reasons.map(lineReasonWords)).toContain(
    "Of the sessions on 5 May the heaviest is gone on from.",
  );
});
