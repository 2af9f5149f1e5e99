import { speedSetReader } from "../../../src/coaching/series/speed-set";
import { squadIndex } from "../../../src/coaching/series/squad-index";
import { diaryDay } from "../diary/constructed";
import { jumpAttempt, liftingSet } from "./invented-season";

const set = liftingSet({ day: 10 });

test("a set's speed is its fastest repetition, or the figure kept where no repetition was", () => {
  const read = speedSetReader();
  const speedOfSet = (of: typeof set) => read(of)?.speed ?? null;
  expect(speedOfSet({ ...set, repSpeeds: [0.6, null, 0.7, 0.65], setSpeed: 0.9 })).toBe(0.7);
  expect(speedOfSet({ ...set, repSpeeds: [null, 0], setSpeed: 0.62 })).toBe(0.62);
  expect(speedOfSet({ ...set, repSpeeds: [], setSpeed: null })).toBeNull();
  // Where the reader has looked for the fastest already, that is taken.
  expect(speedOfSet({ ...set, repSpeeds: [], setSpeed: 0.9, fastestRep: 0.71 })).toBe(0.71);
  expect(speedOfSet({ ...set, repSpeeds: [], setSpeed: 0.62, fastestRep: 0 })).toBe(0.62);
});

test("warm-ups and sets without a speed are no speed sets, markers are marked", () => {
  const read = speedSetReader();
  expect(read({ ...set, kind: "warm-up" })).toBeNull();
  expect(read({ ...set, repSpeeds: [] })).toBeNull();
  expect(read({ ...set, repSpeeds: [], setSpeed: 0 })).toBeNull();
  expect(read({ ...set, kind: "marker" })).toMatchObject({ marker: true, day: 10, loadKg: 60 });
  expect(read(set)).toMatchObject({ marker: false, speed: 0.7, set });
});

test("one setting, however it is written, is one; any of its parts makes another", () => {
  const read = speedSetReader();
  const usual = read(set)!.setting;
  expect(usual).toEqual({
    tool: "bar tool A",
    gym: "club",
    speedIs: "mean",
    barKg: 20,
    figure: "best rep",
  });
  const others = [
    { tool: "bar tool B" },
    { gym: "home" },
    { speedIs: "peak" as const },
    { barKg: 15 },
    { repSpeeds: [], setSpeed: 0.68, setSpeedIs: "mean of reps" as const },
  ];
  const settings = others.map((other) => read({ ...set, ...other })!.setting);
  expect(new Set([usual, ...settings]).size).toBe(6);
  // And back again, one after another and spelt otherwise.
  expect(read(set)!.setting).toBe(usual);
  expect(read({ ...set, tool: "Bar  TOOL a", gym: "CLUB" })!.setting).toBe(usual);
  others.forEach((other, at) => {
    expect(read({ ...set, ...other })!.setting).toBe(settings[at]);
  });
});

test("a set kept as one figure is of that figure, one with repetitions of its best", () => {
  const read = speedSetReader();
  const figure = (of: Partial<typeof set>) => read({ ...set, ...of })!.setting.figure;
  expect(figure({ repSpeeds: [null, 0.6], setSpeedIs: "mean of reps" })).toBe("best rep");
  expect(figure({ repSpeeds: [null, 0], setSpeed: 0.6, setSpeedIs: "mean of reps" })).toBe(
    "mean of reps",
  );
  expect(figure({ repSpeeds: [], setSpeed: 0.6, setSpeedIs: null })).toBeNull();
  expect(figure({ repSpeeds: [], fastestRep: 0, setSpeed: 0.6, setSpeedIs: "mean of reps" })).toBe(
    "mean of reps",
  );
  expect(figure({ repSpeeds: [], fastestRep: 0.7, setSpeedIs: "mean of reps" })).toBe("best rep");
});

test("the first marker and the first work set of a day lead it, and no other set", () => {
  const day = (on: number, ...kinds: readonly ("marker" | "work")[]) =>
    kinds.map((kind) => liftingSet({ day: on, kind }));
  const { lifts } = squadIndex(
    {
      sets: [...day(10, "marker", "marker", "work", "work"), ...day(12, "work", "marker", "work")],
    },
    20,
  ).of("Ilka Brandmoor")!;
  expect([...lifts.values()].flat().map(({ day: on, leads }) => [on, leads])).toEqual([
    [10, "marker"],
    [10, null],
    [10, "work"],
    [10, null],
    [12, "work"],
    [12, "marker"],
    [12, null],
  ]);
});

const sets = [
  liftingSet({ day: 12, athlete: "Wren Castellow", row: 2 }),
  liftingSet({ day: 11, athlete: "wren  castellow", row: 3, exercise: "Back squat" }),
  liftingSet({ day: 10, athlete: "Ada Fenwright", row: 4, exercise: "bench press" }),
  liftingSet({ day: 13, athlete: "Wren Castellow", row: 5 }),
];

test("athletes and lifts are one under any spelling, athletes in order of name, rows in order of day", () => {
  const index = squadIndex({ sets }, 20);
  expect([...index.athletes.values()].map(({ athlete }) => athlete)).toEqual([
    "Ada Fenwright",
    "Wren Castellow",
  ]);
  const wren = index.of("WREN CASTELLOW")!;
  expect([...wren.lifts.values()].map((rows) => rows.map(({ day }) => day))).toEqual([
    [11, 12, 13],
  ]);
  expect(index.of("Nobody Known")).toBeUndefined();
  expect(index.asOf).toBe(20);
});

test("rows after the day asked for are not yet known, of any kind; those on it are", () => {
  const rows = {
    sets,
    jumps: [10, 12, 13].map((day) => jumpAttempt({ day, athlete: "Wren Castellow" })),
    diary: [13, 12, 9].map((day) => diaryDay(day, { athlete: "Wren Castellow" })),
  };
  const { lifts, jumps, diary } = squadIndex(rows, 12).of("Wren Castellow")!;
  expect([...lifts.values()].flat().map(({ day }) => day)).toEqual([11, 12]);
  expect([...jumps.values()].flat().map(({ day }) => day)).toEqual([10, 12]);
  expect(diary.map(({ day }) => day)).toEqual([9, 12]);
  expect(squadIndex(rows, 8).athletes.size).toBe(0);
});

test("who has only a diary or only sets without a speed is known, without a lift or a jump", () => {
  const index = squadIndex(
    {
      diary: [diaryDay(9, { athlete: "Joss Yarrowby" })],
      sets: [liftingSet({ day: 9, athlete: "Pell Oakhanger", repSpeeds: [] })],
    },
    20,
  );
  for (const name of ["Joss Yarrowby", "Pell Oakhanger"]) {
    expect(index.of(name)).toMatchObject({ athlete: name, lifts: new Map(), jumps: new Map() });
  }
  expect(index.of("Joss Yarrowby")!.diary).toHaveLength(1);
});

test("tests are one under any spelling, and two tests are two", () => {
  const jumps = [
    jumpAttempt({ day: 9, test: "Box jump" }),
    jumpAttempt({ day: 8, test: "box  JUMP" }),
    jumpAttempt({ day: 8, test: "hop" }),
  ];
  const own = squadIndex({ jumps }, 20).of("Ilka Brandmoor")!;
  expect([...own.jumps.values()].map((rows) => rows.map(({ day }) => day))).toEqual([[8, 9], [8]]);
});

test("rows of two athletes and two lifts one after the other go each to its own", () => {
  const sets = ["Ilka", "Tomas", "Ilka", "Ilka"].map((athlete, at) =>
    liftingSet({ row: at + 2, day: 10, athlete, exercise: at === 3 ? "hip thrust" : "back squat" }),
  );
  const index = squadIndex({ sets }, 10);
  const rows = (athlete: string) =>
    [...index.of(athlete)!.lifts].map(([lift, own]) => [lift, own.map(({ set: { row } }) => row)]);
  expect(rows("Ilka")).toEqual([
    ["back squat", [2, 4]],
    ["hip thrust", [5]],
  ]);
  expect(rows("Tomas")).toEqual([["back squat", [3]]]);
});
