import fc from "fast-check";
import {
  exerciseList,
  type Missing,
} from "../../../../src/coaching/next-week/exercises/exercise-list";
import { dropHeight } from "../../../../src/coaching/next-week/jumps/drop-height";
import { equalPlates } from "../../../../src/coaching/next-week/jumps/drop-stack";
import { jumpSets } from "../../../../src/coaching/next-week/jumps/jump-sets";
import {
  type SessionGiven,
  sessionPlan,
} from "../../../../src/coaching/next-week/session/session-plan";
import type { JumpAttempt } from "../../../../src/coaching/record/jump-attempt";
import { jumpAttempt } from "../../series/invented-season";
import { day, plates } from "../written-squad";

const usual: SessionGiven = {
  lift: "back squat",
  sets: 3,
  reps: 5,
  loadKg: 85,
  markerKg: 67.5,
  jumps: jumpSets(60, 20),
  noJumps: false,
  isCut: false,
  state: { soreness: null, lastWord: "as usual" },
  missing: [],
  noPlates: [],
  lastLoad: () => null,
};
const anything: readonly Missing[] = ["rack", "plate", "leg", "trunk", "arm"];
const plan = (over: Partial<SessionGiven> = {}) => sessionPlan({ ...usual, ...over });
const short = (over: Partial<SessionGiven> = {}) =>
  plan(over).map(({ kind, sets, reps }) => `${kind} ${sets}×${reps}`);

test("fast and light before slow and heavy, the marker in the warm-up", () => {
  expect(short()).toEqual([
    "warm-up 1×1",
    "marker 1×3",
    "plyometrics 4×10",
    "jump 3×5",
    "jump 1×5",
    "main lift 3×5",
    "assistance 2×6",
    "assistance 2×8",
  ]);
});

test("no jumps: nothing that lands is left, the rest stands", () => {
  const items = plan({ noJumps: true });
  expect(items.reduce((sum, { contacts }) => sum + contacts, 0)).toBe(0);
  const out = items.filter(({ reason }) => reason === "no-jumps");
  expect(out.map(({ exercise }) => exercise)).toEqual(["", "", ""]);
  expect(items.find(({ kind }) => kind === "main lift")).toMatchObject({ sets: 3, loadKg: 85 });
});

test("a sore day: what makes sore gives way, one set of assistance", () => {
  const items = plan({ state: { soreness: { day: 1, value: 7 }, lastWord: "as usual" } });
  expect(items.filter(({ reason }) => reason === "sore").map(({ exercise }) => exercise)).toEqual([
    "hops on and off a plate",
    "step-up",
  ]);
  expect(items.filter(({ kind }) => kind === "assistance").map(({ sets }) => sets)).toEqual([1, 1]);
  const slow = plan({ state: { soreness: null, lastWord: "well below usual" } });
  expect(slow.some(({ reason }) => reason === "well-below-usual")).toBe(true);
});

test("no rack: the alternative, without the bar's load", () => {
  const main = plan({ missing: ["rack"] }).find(({ kind }) => kind === "main lift")!;
  expect(main).toMatchObject({
    exercise: "leg press",
    loadKg: null,
    insteadOf: "back squat",
    reason: "no-rack",
  });
});

test("a load is written for what is lifted: the alternative's and assistance's own last, none for jumps", () => {
  const lastLoad = (exercise: string) => (exercise === "leg press" ? 140 : 22.5);
  const loads = (over: Partial<SessionGiven> = {}) =>
    plan({ lastLoad, ...over }).map(({ exercise, loadKg }) => [exercise.split(" ")[0], loadKg]);
  expect(loads()).toEqual([
    ["bike", null],
    ["back", 67.5],
    ["hops", null],
    ["plate-to-plate", null],
    ["straight-leg", null],
    ["back", 85],
    ["rear-foot-elevated", 22.5],
    ["seated", 22.5],
  ]);
  expect(loads({ missing: ["rack"] })).toContainEqual(["leg", 140]);
});

test("without contacts there are no jumps in the list, not ones of no repetitions", () => {
  expect(short({ jumps: jumpSets(0, 20) })).toEqual([
    "warm-up 1×1",
    "marker 1×3",
    "main lift 3×5",
    "assistance 2×6",
    "assistance 2×8",
  ]);
});

test("without plates to drop from, skipping rope stands for the drop jump", () => {
  const items = plan({ noPlates: ["plate-to-plate drop jump"] });
  expect(items.filter(({ reason }) => reason === "no-plate")).toMatchObject([
    { exercise: "skipping rope", insteadOf: "plate-to-plate drop jump" },
  ]);
});

test("whatever is missing: the order stays, and what lands is what was planned, or nothing", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 110 }),
      fc.subarray([...anything]),
      fc.boolean(),
      (contacts, missing, noJumps) => {
        const items = plan({ jumps: jumpSets(contacts, 20), missing, noJumps });
        const landed = items.reduce((sum, item) => sum + item.contacts, 0);
        expect(landed).toBe(noJumps ? 0 : contacts);
        const kinds = ["warm-up", "marker", "plyometrics", "jump", "main lift", "assistance"];
        const places = items.map(({ kind }) => kinds.indexOf(kind));
        expect(places).toEqual([...places].sort((a, b) => a - b));
      },
    ),
  );
});

const drop = (iso: string, dropCm: number, contactS: number | null) =>
  jumpAttempt({ day: day(iso), athlete: "Joss Whitterby", test: "drop jump", dropCm, contactS });
const height = (jumps: readonly JumpAttempt[], experience: "novice" | "trained" = "trained") =>
  dropHeight(jumps, "joss whitterby", day("2026-06-28"), experience, plates);

test("the drop comes down once its contact passes 0.25 s; novices drop from 20 cm or less", () => {
  expect(height([drop("2026-06-09", 30, 0.221)])).toMatchObject({ cm: 30, reason: "as last" });
  const long = [drop("2026-06-09", 30, 0.221), drop("2026-06-23", 30, 0.257)];
  expect(height(long)).toMatchObject({ cm: 20, reason: "contact long" });
  expect(height([drop("2026-07-01", 30, 0.257)])).toMatchObject({ reason: "first drop" });
  expect(height([drop("2026-06-09", 30, 0.2)], "novice")).toMatchObject({
    cm: 20,
    reason: "novice",
  });
});

test("equal plates, never higher than the height, counted by hand", () => {
  // Up to 30 cm, six of 15, 10, 5, 2.5 and 1.25 kg owned, four of 25 and ten of 20: 6 × 4.3 = 25.8;
  // 6 × 3.6 = 21.6; 4 × 4.5 = 18; 6 × 2.9 = 17.4. Six of 20 kg come nearest.
  expect(equalPlates(30, plates)).toEqual([20, 20, 20, 20, 20, 20]);
  expect(equalPlates(0.5, plates)).toEqual([]);
});

test("a drop from plates of no known thickness comes one plate lower after a long contact, and says why", () => {
  const stacked = { ...drop("2026-06-23", 30, 0.257), dropCm: null, dropStackKg: [20, 20] };
  expect(dropHeight([stacked], "Joss Whitterby", day("2026-06-28"), "trained", [])).toEqual({
    cm: null,
    stackKg: [20],
    reason: "contact long",
  });
});

test("a jump onto a box afterwards is no drop: the last drop's height stands", () => {
  const box = { ...drop("2026-06-23", 30, null), dropCm: null, test: "box jump" };
  expect(height([drop("2026-06-09", 40, 0.2), box])).toMatchObject({ cm: 40, reason: "as last" });
});

test("more plates of the height wanted are taken before fewer that stay under it", () => {
  const thin = { row: 2, massKg: 20, thicknessCm: 3, owned: 10 };
  const thick = { row: 3, massKg: 25, thicknessCm: 10, owned: 2 };
  expect(equalPlates(30, [thin, thick])).toEqual(Array(10).fill(20));
});

test("plates as thick and as many stand for one another: those listed first", () => {
  const five = (massKg: number) => ({ row: 2, massKg, thicknessCm: 5, owned: null });
  expect(equalPlates(30, [five(20), five(15)])).toEqual(Array(6).fill(20));
  expect(equalPlates(30, [five(15), five(20)])).toEqual(Array(6).fill(15));
});

test("without a marker load there is no marker set", () => {
  expect(short({ markerKg: null })).toEqual(short().filter((one) => one !== "marker 1×3"));
});

test("whatever lift it is gives way to a sore limb before a missing rack, by its own name", () => {
  const lift = "trap-bar deadlift";
  const main = (missing: NonNullable<SessionGiven["missing"]>) =>
    plan({ missing, lift }).find(({ kind }) => kind === "main lift")!;
  expect(main([])).toMatchObject({ exercise: lift, insteadOf: null, reason: null });
  expect(main(["leg"])).toMatchObject({ exercise: "single-leg press, other leg", reason: "limb" });
  const both = { exercise: "leg press", insteadOf: lift, reason: "limb" };
  expect(main(["trunk", "rack"])).toMatchObject(both);
});

test("every exercise has another that stands for it, also when one thing is missing", () => {
  for (const { name, instead, without } of exerciseList)
    for (const other of [instead, ...Object.values(without)])
      expect([name, other]).toEqual([name, expect.stringMatching(/\w{4}/)]);
});

test.each([
  ["rack", ["leg press", "rear-foot-elevated split squat, weight opposite", "seated twist"]],
  ["leg", ["single-leg press, other leg", "split squat, other leg only", "seated twist"]],
  ["trunk", ["leg press", "step-up", "side plank"]],
  ["arm", ["leg press", "step-up, no weight", "dead bug"]],
  ["foot", ["back squat", "rear-foot-elevated split squat, weight opposite", "seated twist"]],
] as const)("without a %s: %j", (missing, lifts) => {
  const items = plan({ missing: [missing], markerKg: null });
  const lifted = items.filter(({ kind }) => kind === "main lift" || kind === "assistance");
  expect(lifted.map(({ exercise }) => exercise)).toEqual(lifts);
  for (const { exercise, insteadOf, reason } of lifted)
    expect([exercise, reason]).toEqual([
      exercise,
      insteadOf === null ? null : missing === "rack" ? "no-rack" : "limb",
    ]);
});
