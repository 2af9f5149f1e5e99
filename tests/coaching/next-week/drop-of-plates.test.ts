import { dropCmOf } from "../../../src/coaching/jumps/drop-cm";
import { dropHeight } from "../../../src/coaching/next-week/jumps/drop-height";
import { proposeLine } from "../../../src/coaching/next-week/propose-line";
import { dropReasons } from "../../../src/coaching/next-week/reasons/line-reasons";
import type { JumpAttempt } from "../../../src/coaching/record/jump-attempt";
import type { Plate } from "../../../src/coaching/record/plate";
import { understandTable } from "../../../src/rows/read-table";
import { lineReasonWords } from "../../../src/words/week";
import { jumpAttempt } from "../series/invented-season";
import { athlete, day, plates, session, squadRows, state } from "./written-squad";

const name = "Joss Whitterby";
const drop = (dropStackKg: readonly number[], over: Partial<JumpAttempt> = {}) =>
  jumpAttempt({
    athlete: name,
    day: day("2026-06-23"),
    test: "drop jump",
    dropCm: null,
    dropStackKg,
    contactS: 0.2,
    ...over,
  });
const dropFrom = (dropCm: number, contactS: number) =>
  jumpAttempt({ athlete: name, day: day("2026-06-23"), test: "drop jump", dropCm, contactS });
const next = (
  jumps: readonly JumpAttempt[],
  experience: "novice" | "trained" = "trained",
  gym = plates,
) => dropHeight(jumps, name, day("2026-06-28"), experience, gym);

test("a drop written in plates is as high as the gym's plates are thick", () => {
  // Five of 15 kg and one of 5: 5 × 3.6 + 2.2 = 20.2 cm.
  expect(dropCmOf(drop([15, 15, 15, 15, 15, 5]), plates)).toBeCloseTo(20.2, 9);
  expect(dropCmOf(drop([15, 7]), plates)).toBeNull();
  expect(dropCmOf({ dropCm: 30 }, plates)).toBe(30);
});

test("the coach's mixed stack is built again, not one of equal plates", () => {
  const found = next([drop([20, 20, 20, 15, 5])]);
  // 3 × 4.3 + 3.6 + 2.2 = 18.7 cm.
  expect(found).toMatchObject({ stackKg: [20, 20, 20, 15, 5], reason: "as last" });
  expect(found.cm).toBeCloseTo(18.7, 9);
});

test("of a day's drops the highest counts, and a figure in cm is made of equal plates", () => {
  expect(next([drop([15, 15]), drop([15, 15, 5])]).stackKg).toEqual([15, 15, 5]);
  const figure = next([drop([15, 15, 5]), dropFrom(30, 0.2)]);
  expect(figure).toMatchObject({ cm: 30, stackKg: [20, 20, 20, 20, 20, 20] });
});

test("a long contact takes plates off the top until the drop is 10 cm lower", () => {
  // 22.8 cm, so 12.8 at most: 3 × 3.6 = 10.8, a fourth would make 14.4.
  const stack = [15, 15, 15, 15, 15, 10, 1.25, 1.25];
  const long = next([drop(stack.slice(0, 6), { contactS: 0.27 })]);
  expect(long).toMatchObject({ stackKg: [15, 15, 15], reason: "contact long" });
  // Novices drop from 20 cm at most: the 2.9 cm plate of 10 kg comes off.
  expect(next([drop(stack.slice(0, 6))], "novice")).toMatchObject({
    cm: 20,
    stackKg: [15, 15, 15, 15, 15],
    reason: "novice",
  });
});

test("plates nobody measured: the same stack again, one plate lower after a long contact", () => {
  expect(next([drop([20, 20, 5])], "trained", [])).toEqual({
    cm: null,
    stackKg: [20, 20, 5],
    reason: "as last",
  });
  expect(next([drop([20, 20, 5], { contactS: 0.27 })], "trained", []).stackKg).toEqual([20, 20]);
  expect(next([drop([20], { contactS: 0.27 })], "trained", []).stackKg).toEqual([20]);
});

test("a cell of the drop's height may hold plates; a figure stays a figure, nonsense is reported", () => {
  const read = understandTable<"Jumps">(
    "Jumps",
    [
      ["Date", "Athlete", "Test", "Drop height (cm)", "Contact (ms)"],
      ...["3x20+5", "2×15+1,25", "5+5", "30", "2x", "20x5"].map((cell) => [
        "2026-05-12",
        name,
        "drop jump",
        cell,
        205,
      ]),
    ],
    { today: day("2026-05-14") },
  ).reading;
  expect(read.records.map(({ dropCm, dropStackKg }) => dropStackKg ?? dropCm)).toEqual([
    [20, 20, 20, 5],
    [15, 15, 1.25],
    [5, 5],
    30,
    null,
    null,
  ]);
  expect(read.issues.map(({ code, found }) => [code, found])).toEqual([
    ["not-a-number", "2x"],
    ["not-a-number", "20x5"],
  ]);
});

test("why a drop is lower is among a line's reasons, and nothing is said without drop jumps", () => {
  const given = { sets: 5, reps: 5, loadKg: 85, markerKg: 67.5 };
  const lineOf = (contactS: number, soreness: { day: number; value: number } | null = null) =>
    proposeLine({
      athlete: athlete(name),
      name,
      state: state(name, { soreness }),
      rows: squadRows({
        sets: session(name, "2026-06-23", given),
        jumps: [dropFrom(30, contactS)],
      }),
      monday: day("2026-06-29"),
      asOf: day("2026-06-28"),
    });
  expect(lineOf(0.257).reasons.map(lineReasonWords)).toContain(
    "Drop jump lower: contact was slow, past 0.25 s.",
  );
  expect(dropReasons(lineOf(0.2).sessions)).toEqual([]);
  // A sore day's hops take the drop jump's place.
  expect(dropReasons(lineOf(0.257, { day: day("2026-06-28"), value: 7 }).sessions)).toEqual([]);
  expect(dropReasons([])).toEqual([]);
});

test("a gym that lists no plates is not told that it lacks some for its jumps or its marker", () => {
  const itemsWith = (of: readonly Plate[]) =>
    proposeLine({
      athlete: athlete(name),
      name,
      state: state(name),
      rows: squadRows({
        sets: session(name, "2026-06-23", { sets: 5, reps: 5, loadKg: 85, markerKg: 67.5 }),
        plates: of,
      }),
      monday: day("2026-06-29"),
      asOf: day("2026-06-28"),
    }).sessions[0]!.items;
  const lacks = (of: readonly Plate[]) => itemsWith(of).some(({ reason }) => reason === "no-plate");
  const [large] = plates;
  expect([lacks([]), lacks([{ ...large!, thicknessCm: 50 }])]).toEqual([false, true]);
  const marker = itemsWith([]).find(({ kind }) => kind === "marker");
  expect(marker!.loadKg).toBe(67.5);
});
