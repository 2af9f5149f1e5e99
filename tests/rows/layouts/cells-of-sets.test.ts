import { asWeekday } from "../../../src/rows/layout/shorthand/as-weekday";
import { schemeGroups } from "../../../src/rows/layout/shorthand/scheme";
import {
  noSense,
  orderFromWords,
  schemeSense,
} from "../../../src/rows/layout/shorthand/scheme-order";
import { problemOf, setCell } from "../../../src/rows/layout/shorthand/set-cell";
import { figuresFor, spreadSpeeds } from "../../../src/rows/layout/shorthand/spread-speeds";

const setsFirst = schemeSense(["sets", "reps"], undefined);

/** "85kg 3x5 @ 0.62 0.6 (note)" for what a cell of sets says; its kind for any other. */
const said = (cell: unknown, sense = noSense, speeds = 0) => {
  const one = setCell(cell, sense, speeds);
  if (one.is === "none") return `none: ${one.note}`;
  if (one.is !== "sets") return one.is;
  const groups = one.groups.map(
    ({ load, unit, sets, reps }) => `${load}${unit?.name ?? ""} ${sets}x${reps}`,
  );
  const beside =
    one.speeds.length > 0 ? ` @ ${one.speeds.map((speed) => speed ?? "-").join(" ")}` : "";
  return `${groups.join(", ")}${beside}${one.note === "" ? "" : ` (${one.note})`}`;
};

test.each([
  [82.5, "82.5 1xnull"],
  ["95x5x5 @ .62", "95 5x5 @ 0.62"],
  ["95x5x5@.62", "95 5x5 @ 0.62"],
  ["95x5x5  ,62; 0.60", "95 5x5 @ 0.62 0.6"],
  ["95x5x5, 0.62, 0.6,", "95 5x5 @ 0.62 0.6"],
  ["95x5 .62/x/.60", "95 1x5 @ 0.62 - 0.6"],
  ["95x5 x/.62", "95 1x5 @ - 0.62"],
  ["95x5 .62m/s", "95 1x5 @ 0.62"],
  ["95x5x5 stopped, calf pain 3/10", "95 5x5 (stopped calf pain 3/10)"],
  ["out – back w/c 1 June", "none: out – back w/c 1 June"],
  ["95x5x5 .62/.60/-", "95 5x5 @ 0.62 0.6 -"],
  ["95x5x5 - .62", "95 5x5 @ 0.62 (-)"],
  ["95x5x5 .62/.60", "95 5x5 @ 0.62 0.6"],
  ["5x5 95", "95 5x5"],
  ["1x5 .5kg", "0.5kg 1x5"],
  ["1x5 .25kg", "0.25kg 1x5"],
  ["5x5x.75", "0.75 5x5"],
  ["85  kg x 3", "85kg 1x3"],
  ["85x3 2xslow", "85 1x3 (2xslow)"],
  ["85x3 .6?/fast", "85 1x3 (.6?/fast)"],
  ["85x5 3x5 90", "85 1x5, 90 3x5"],
  ["95 5x5", "95 5x5"],
  ["5 x 5 95 kg", "95kg 5x5"],
  ["95 kg x 5 x 5", "95kg 5x5"],
  ["185 LB × 3 ✕ 3", "185lb 3x3"],
  ["185 lbs*3*3", "185lb 3x3"],
  ["85x3x3 + 1x3", "85 3x3, 85 1x3"],
  ["85kgx3x3+2x2", "85kg 3x3, 85kg 2x2"],
  ["85x5 90x3", "85 1x5, 90 1x3"],
  ["85x3 (bar slipped, redo)", "85 1x3 (bar slipped, redo)"],
  ["85x3 tough ( slow )(late)", "85 1x3 (tough; slow; late)"],
  ["57,5x2", "57.5 1x2"],
  ["16", "16 1xnull"],
  ["8kg", "8kg 1xnull"],
  ["60 0.62", "60 1xnull @ 0.62"],
  ["85x3 2nd try", "85 1x3 (2nd try)"],
  ["20 min", "none: 20 min"],
  ["30 Minuten bike", "none: 30 Minuten bike"],
  ["20 km (easy)", "none: 20 km; easy"],
  ["20 mini", "unread"],
  ["20 slow min", "unread"],
  ["85x3x3 +1x3", "85 3x3, 85 1x3"],
  ["85x3x3+ 1x3", "85 3x3, 85 1x3"],
  ["90x1", "90 1x1"],
  ["20 heavy", "unread"],
  ["(sore) rest", "none: rest; sore"],
  ["rest day", "none: rest day"],
  ["(sore)", "none: sore"],
  ["15", "unread"],
  ["85x3 15", "unread"],
  ["85x3 3", "unread"],
  ["85x3 3.5", "unread"],
  ["85x3 3.4", "85 1x3 @ 3.4"],
  ["85x3 0.6?", "unread"],
  ["2nd 85x3", "unread"],
  ["x85x3", "unread"],
  ["85x3x", "unread"],
  ["85x3!", "unread"],
  ["85x95x5", "unread"],
  ["85x3x5", "order-unsettled"],
  ["85x3x5 90x3", "order-unsettled"],
  ["as Tue", "as-weekday"],
  [true, "unread"],
  [null, "none: "],
  ["ditto", "ditto"],
  ["DNS", "none: "],
])("a cell of sets %p says %s", (cell, meant) => {
  expect(said(cell)).toBe(meant);
});

test("speeds written beside or elsewhere settle what sets and repetitions are", () => {
  expect(said("0.6 0.59 0.58 85x3x5")).toBe("85 3x5 @ 0.6 0.59 0.58");
  expect(said("85x3x5", noSense, 3)).toBe("85 3x5");
  expect(said("85x3x5", noSense, 5)).toBe("85 5x3");
  expect(said("0.6 0.59 85x3x5", noSense, 1)).toBe("85 3x5 @ 0.6 0.59");
  expect(said("85x1x5", noSense, 1)).toBe("order-unsettled");
  expect(said("85x5x1", noSense, 1)).toBe("order-unsettled");
  expect(said("85x3x5+1x2", noSense, 3)).toBe("order-unsettled");
  expect(said("85x3x5", setsFirst)).toBe("85 3x5");
});

test("a thousand signs and forty groups are the most a session can hold", () => {
  const sets = Array(40).fill("85x3").join(" ");
  expect(setCell(sets, noSense)).toMatchObject({ is: "sets", groups: { length: 40 } });
  expect(said(`${sets} 85x3`)).toBe("unread");
  expect(said(`85x3 ${"a".repeat(995)}`)).toBe(`85 1x3 (${"a".repeat(995)})`);
  expect(said(`85x3 ${"a".repeat(996)}`)).toBe("unread");
});

test("a cell that gives no sets has its own word", () => {
  const problem = (cell: string) => problemOf(setCell(cell, noSense));
  expect(['"', "wie Di", "85x3x5", "lots 5"].map(problem)).toEqual([
    "nothing-to-repeat",
    "nothing-to-repeat",
    "scheme-order-unsettled",
    "scheme-unread",
  ]);
});

test.each([
  ["16x12x60", null],
  ["16x12", "16 1x12"],
  ["12x16", "16 1x12"],
  ["15x15", null],
  ["12x15", "null 12x15"],
  ["16x16", null],
  ["15.5x3x3", "15.5 3x3"],
  ["16x2.5x3", null],
  ["85x3x3+1x0", "85 3x3, 85 1x0"],
  ["85x3x3+12x2", "85 3x3, 85 12x2"],
  ["85x3x3+x2", null],
  ["85x3x3+1x2x", null],
  ["85x3x3+a1x2", null],
  [".5x3x3", "0.5 3x3"],
  ["85kg5x3", null],
  ["85x3x3x3", null],
  ["", null],
])("the scheme “%s” is %p", (text, meant) => {
  const groups = schemeGroups(text, noSense, 0);
  const read = Array.isArray(groups)
    ? groups.map(({ load, sets, reps }) => `${load} ${sets}x${reps}`).join(", ")
    : groups;
  expect(read).toBe(meant);
});

test("a dozen sets of sixty repetitions are the most", () => {
  const order = schemeSense(["reps", "sets", "load"], undefined);
  const many = (text: string) => schemeGroups(text, order, 0) !== null;
  expect(
    ["60x12x20", "61x12x20", "60x13x20", "0x3x20", "5x0x20", "2.5x3x20", "5x2.5x20"].map(many),
  ).toEqual([true, ...Array(6).fill(false)]);
});

test("an order spelled out counts before everything else", () => {
  const sense = schemeSense(["reps", "load", "sets"], true);
  expect(schemeGroups("3x20x5", sense, 3)).toEqual([{ load: 20, unit: null, reps: 3, sets: 5 }]);
  expect(schemeSense(["load", "sets"], true)).toEqual({ order: null, setsFirst: true });
  expect(schemeSense(["reps", "sets"], true)).toEqual({ order: null, setsFirst: false });
  expect(schemeSense(["sets", "load", "reps"], false).setsFirst).toBe(true);
  expect(schemeSense(null, undefined)).toEqual(noSense);
});

test.each([
  ["kg x sets x reps", ["load", "sets", "reps"]],
  ["Sätze × Wdh. (× kg)", ["sets", "reps"]],
  ["sets*reps@load", ["sets", "reps", "load"]],
  ["Squat: reps x sets", ["reps", "sets"]],
  ["rep x set", ["reps", "sets"]],
  ["Gewicht x Wiederholungen x Saetze", ["load", "reps", "sets"]],
  ["lbs x repetitions", ["load", "reps"]],
  ["box x jump, sets x reps", ["sets", "reps"]],
  ["sets x reps x box", null],
  ["load x weight", null],
  ["sets x repsy", null],
  ["sets and reps", null],
  ["5x5", null],
  [5, null],
])("the words %p spell %p", (cell, order) => {
  expect(orderFromWords(cell)).toEqual(order);
});

test.each([
  ["wie Di", 1],
  [" As  Tue. ", 1],
  ["like last Tuesday", 1],
  ["same as on Fri", 4],
  ["see Sun", 6],
  ["as Foo", null],
  ["was Tue", null],
  ["as Tue 2", null],
  ["Tue", null],
  [2, null],
])("%p copies weekday %p", (cell, weekday) => {
  expect(asWeekday(cell)).toBe(weekday);
});

test.each([
  ["speeds je satz", "each set"],
  ["speed per set", "each set"],
  ["each set", "each set"],
  ["a set", "each set"],
  ["set means", "each set"],
  ["set mean", "each set"],
  ["pro satz", "each set"],
  ["je wdh", "each rep"],
  ["per rep", "each rep"],
  ["each rep", "each rep"],
  ["rep speeds", "each rep"],
  ["pro wdh", "each rep"],
  ["a setting", null],
  ["per repeat", null],
])("words “%s” say that figures are for %p", (words, figures) => {
  expect(figuresFor(words)).toBe(figures);
});

test("a speed that is missing keeps its place; speeds all missing say nothing", () => {
  const single = (value: number | null) => ({ reps: [], single: value });
  expect(spreadSpeeds([null, 0.6], [5, 5], "each set")).toEqual([single(null), single(0.6)]);
  expect(spreadSpeeds([], [5, 5], "each rep")).toEqual([single(null), single(null)]);
  expect(spreadSpeeds([0.6, null, 0.58], [3], null)).toEqual([
    { reps: [0.6, null, 0.58], single: null },
  ]);
  expect(spreadSpeeds([0.6, 0.6, 0.6, 0.6], [3, 3, 3, 3, 3], null)).toBe("unsettled");
  expect(spreadSpeeds([0.6], [5], "each rep")).toEqual([{ reps: [0.6], single: null }]);
  expect(spreadSpeeds([0.6, 0.5], [3, null], null)).toEqual([single(0.6), single(0.5)]);
  expect(spreadSpeeds([0.6, 0.5, 0.4], [3, 3, 2], "each rep")).toEqual([
    { reps: [0.6, 0.5, 0.4], single: null },
    single(null),
    single(null),
  ]);
});

test.each([
  // Of several loads nothing says which sets are whose.
  ["5x5 80 85", "unread"],
  ["80 85", "unread"],
  ["105 kg 5x5 100 kg", "unread"],
  // Beside a load of the sets' own a figure is no second one, and is kept.
  ["85x5 rest 90 s", "85 1x5 (90 rest s)"],
  ["20 min bike, 85x5", "85 1x5 (20 min bike)"],
  ["85x5 90 95", "85 1x5 (90 95)"],
  ["95x5x5(slow).62", "95 5x5 @ 0.62 (slow)"],
  ["57,25 5x5", "57.25 5x5"],
  ["100lb 5x5", "100lb 5x5"],
  ["95x5x5 wk2", "95 5x5 (wk2)"],
  [".62 .60", "unread"],
])("a cell of sets “%s” says %s", (cell, sets) => {
  expect(said(cell)).toBe(sets);
});

test("spaces around an x part no shorthand", () => {
  for (const cell of ["85x3x5", "85 x3 x5", "85x 3x 5", "85 x 3 x 5", "57,25x3x5"])
    expect(said(cell, setsFirst)).toMatch(/^(85|57.25) 3x5$/);
});

test("only as many speeds as there are sets or repetitions tell which is which", () => {
  expect([3, 4, 5].map((speeds) => said("85x3x5", noSense, speeds))).toEqual([
    "85 3x5",
    "order-unsettled",
    "85 5x3",
  ]);
});

test("a heading that names sets or repetitions alone says no order of them", () => {
  const known = (parts: readonly ("load" | "sets" | "reps")[], answered?: boolean) =>
    schemeSense(parts, answered).setsFirst;
  expect([known(["load", "sets"]), known(["load", "reps"])]).toEqual([null, null]);
  expect([known(["load", "sets"], true), known(["load", "reps"], false)]).toEqual([true, false]);
});

test("speeds left out in every place are nobody's", () => {
  const none = { reps: [], single: null };
  expect(spreadSpeeds([null, null], [5, 5, 5], null)).toEqual([none, none, none]);
});
