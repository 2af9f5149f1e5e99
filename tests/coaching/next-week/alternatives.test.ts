import { proposeLine } from "../../../src/coaching/next-week/propose-line";
import type { AvailabilitySpell } from "../../../src/coaching/record/availability-spell";
import type { LiftingSet } from "../../../src/coaching/record/lifting-set";
import type { Plate } from "../../../src/coaching/record/plate";
import { usualRules } from "../../../src/coaching/record/squad-rules";
import { itemWords } from "../../../src/words/session";
import { lineReasonWords } from "../../../src/words/week";
import { jossModified } from "../availability/joss-modified";
import {
  athlete,
  clubRuns,
  day,
  movesAt,
  plates,
  session,
  squadRows,
  state,
} from "./written-squad";

const monday = day("2026-05-11");
const name = "Joss Whitterby";
const lifted = ["2026-04-28", "2026-04-30", "2026-05-05", "2026-05-07"].flatMap((iso) =>
  session(name, iso, { sets: 3, reps: 5, loadKg: 85, markerKg: 67.5 }),
);
const line = (
  over: Partial<Parameters<typeof squadRows>[0]> = {},
  change: Parameters<typeof proposeLine>[0]["change"] = {},
) =>
  proposeLine({
    athlete: athlete(name),
    name,
    state: state(name, {
      ...movesAt((kg) => 1.7 - 0.012 * kg),
      lastStackKg: [20, 20, 20, 20, 5],
    }),
    rows: squadRows({ sets: lifted, runs: clubRuns(name, monday), ...over }),
    monday,
    asOf: monday - 1,
    change,
  });
const owned = (counts: Readonly<Record<number, number>>): Plate[] =>
  plates.flatMap((plate) => {
    const count = counts[plate.massKg];
    return count === undefined ? [] : [{ ...plate, owned: count }];
  });
const spell = (over: Partial<AvailabilitySpell>) => jossModified(monday - 7, over);
const why = (found: ReturnType<typeof line>) => found.reasons.map(lineReasonWords);
const items = (found: ReturnType<typeof line>) => found.sessions[0]!.items.map(itemWords);

test("too few plates for a load: the nearest under it that can be built, and it is said", () => {
  // 85 kg is 32.5 a side; two pairs of 10 and one of 5 and 2.5 make 27.5: 75 kg.
  const found = line({ plates: owned({ 10: 4, 5: 2, 2.5: 2 }) });
  expect(found.sessions[0]).toMatchObject({ loadKg: 75, plates: [10, 10, 5, 2.5] });
  expect(why(found)).toContain(
    "85 kg cannot be built from the plates here: 75 kg, the nearest under it.",
  );
});

test("a gym that has not written down its plates gets the usual ones, heights left as they are", () => {
  const [one] = line({ plates: [] }).sessions;
  expect(one).toMatchObject({ loadKg: 85, plates: [25, 5, 2.5], stackCm: null });
  expect(one!.stackKg).toEqual([20, 20, 20, 20, 5]);
});

test("a stack the gym's plates do not make is built lower; without plates there is another exercise", () => {
  expect(line({ plates: owned({ 20: 3, 5: 4, 2.5: 4 }) }).sessions[0]!.stackKg).toEqual([
    20, 20, 20,
  ]);
  const none = line({ plates: owned({ 25: 0, 2.5: 4, 10: 6 }) });
  expect(items(none).join("; ")).toContain(
    "jump and reach 1×5 (for straight-leg box jump; no plates for it)",
  );
  expect(why(none)).toContain(
    "No plates here for the straight-leg box jump: jump and reach instead.",
  );
});

test("no rack, by the squad's rule or for one athlete's week: the alternative by feel, no marker, no bands", () => {
  for (const found of [line({ rules: { ...usualRules, racks: 0 } }), line({}, { noRack: true })]) {
    const [one] = found.sessions;
    expect(one!.instead).toMatchObject({ exercise: "leg press", insteadOf: "back squat" });
    expect(one).toMatchObject({
      markerKg: null,
      bands: [],
      plates: [],
      speedFloor: null,
      sets: 3,
      reps: 5,
    });
    expect(why(found)[0]).toBe(
      "No rack: leg press instead of back squat, by feel, 2–3 in reserve.",
    );
  }
});

test("a left knee: the other leg, no jumps, and it is asked about first", () => {
  const found = line({ availability: [spell({ site: "left knee", pain: 2 })] });
  expect(found.sessions[0]!.instead).toMatchObject({ exercise: "single-leg press, other leg" });
  expect(found.sessions[0]!.contacts).toBe(0);
  expect(why(found)[0]).toBe(
    "Left knee: single-leg press, other leg instead of back squat; ask before anything there is loaded.",
  );
  expect(items(found).join("; ")).toContain("split squat, other leg only 2×6");
});

test("a sore back keeps the legs at work and spares the twist; a shoulder takes the bar off it", () => {
  const back = line({ availability: [spell({ site: "lower back" })] });
  expect(back.sessions[0]!.instead).toMatchObject({ exercise: "leg press" });
  expect(items(back).join("; ")).toContain("side plank 2×8");
  const shoulder = line({ availability: [spell({ site: "shoulder" })] });
  expect(shoulder.sessions[0]!.instead).toMatchObject({ exercise: "leg press" });
  expect(shoulder.sessions[0]!.contacts).toBeGreaterThan(0);
});

test("a niggle of 2 written down beside full availability takes nothing out; 4 does", () => {
  const pain = (grade: number) =>
    line({ availability: [spell({ mayDo: "full", site: "right hip", pain: grade })] }).sessions[0]!;
  expect(pain(2).instead).toBeNull();
  expect(pain(4).instead).toMatchObject({ exercise: "single-leg press, other leg" });
});

const assistance = (iso: string, exercise: string, loadKg: number): LiftingSet => ({
  ...session(name, iso, { sets: 1, reps: 6, loadKg, markerKg: 50 })[1]!,
  exercise,
});

test("assistance is loaded as it was last done, by feel when it never was", () => {
  const sets = [
    ...lifted,
    assistance("2026-05-05", "Split squat", 10),
    assistance("2026-05-07", "RFE split squat", 12),
    assistance("2026-05-07", "RFE split squat", 12),
  ];
  const said = items(line({ sets }));
  expect(said).toContain("rear-foot-elevated split squat 2×6, 12 kg in the opposite hand");
  expect(said).toContain("seated twist 2×8, by feel, 2–3 in reserve");
});

test("however many sets of assistance stand in the rows, the main lift stays the main lift", () => {
  const many = Array.from({ length: 40 }, () => assistance("2026-05-07", "split squat", 12));
  expect(line({ sets: [...lifted, ...many] })).toMatchObject({ exercise: "back squat" });
});
