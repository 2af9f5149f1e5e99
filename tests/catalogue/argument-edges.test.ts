import { catalogue } from "../../src/catalogue";
import { alignedWith } from "../../src/catalogue/arguments/aligned-with";
import { seenToday } from "../../src/catalogue/arguments/seen-today";
import { exampleSets } from "../../src/catalogue/example-rows";

const call = (name: string, ...args: unknown[]) =>
  catalogue.find((entry) => entry.name === name)!.compute(args);
const dayLoad = ["0.79 0.80 0.78", 0.86, 85, 3, 2.5, 67.5, "", 20, 0.76, 0.1];
/** The example's arguments with one of them spoilt. */
const spoilt = (given: readonly unknown[], at: number, cell: unknown) =>
  given.map((one, i) => (i === at ? cell : one));

test.each([
  [1, "fastish", "usual_speed is not a number (fastish)"],
  [2, "", "planned_load is blank"],
  [3, "three", "sets_left is not a number (three)"],
  [4, "2.5?", "step"],
  [5, "67 or so", "speed_load is not a number"],
  [7, "twenty", "bar is not a number (twenty)"],
  [8, "low", "low_speed is not a number (low)"],
  [9, "a tenth", "share_off is not a number (a tenth)"],
  [9, 0.5, "0.5 is not a share to take off"],
  [4, 0, "A step of 0 kg is not possible"],
])("today's load with argument %i as %p says what to give", (at, cell, sentence) => {
  expect(() => call("DAY_LOAD", ...spoilt(dayLoad, at, cell))).toThrow(sentence);
});

const nextBlock = ["5x5", 70, "y", "y", "y", 100, 2.5];

test.each([
  [0, "", "block is blank"],
  [0, "five", "five"],
  [1, "heavy", "load is not a number (heavy)"],
  [2, "perhaps", "moved_well"],
  [3, "perhaps", "volume_done"],
  [4, "perhaps", "held_speed"],
  [5, "strong", "strength is not a number (strong)"],
  [6, "", "step is blank"],
  [6, -1, "A step of −1 kg is not possible"],
])("the next block with argument %i as %p says what to give", (at, cell, sentence) => {
  expect(() => call("NEXT_BLOCK", ...spoilt(nextBlock, at, cell))).toThrow(sentence);
});

test("a blank gate of the next block holds, and says which was not recorded", () => {
  const [row] = call("NEXT_BLOCK", ...spoilt(nextBlock, 2, "")) as unknown[][];
  expect(row!.slice(0, 2)).toEqual(["5×5", 70]);
  expect(row![2]).toMatch(/movement/i);
});

test("far below usual there is no heavy work, and a speed that cannot be refuses", () => {
  expect(call("LOAD_DROP", 85, 0.6, 0.86, 2.5)).toBe("no heavy work today");
  expect(() => call("LOAD_DROP", 85, 6, 0.86, 2.5)).toThrow("A speed of 6 m/s is not possible");
  expect(() => call("REPS_IN_RESERVE", 85, "few", 110)).toThrow("few");
  expect(() => call("REPS_IN_RESERVE", 85, 5, "strong")).toThrow("strong");
});

const asOf = "2026-05-21";

test("lines and their figures refuse by sentence what they cannot know", () => {
  const ask = (name: string, athlete: unknown, ...rest: unknown[]) =>
    call(name, athlete, ...rest, exampleSets, "back squat", asOf);
  expect(() => ask("EXPECTED_SPEED", "Ilka Brandmoor", 900)).toThrow("900 kg is not possible");
  expect(() => ask("EXPECTED_SPEED", "Ilka Brandmoor", 400)).toThrow(/400/);
  expect(() => ask("EXPECTED_SPEED", "Nobody Here", 65)).toThrow("Nobody Here");
  expect(() => ask("LOAD_SPEED_LINE", "Nobody Here")).toThrow("Nobody Here");
  expect(() => ask("STRENGTH_ESTIMATE", "Nobody Here")).toThrow("Nobody Here");
});

test("a table left out without its place is told where the day is missed", () => {
  const hold = catalogue.find(({ name }) => name === "SEASON_HOLD")!;
  expect(() => hold.compute(["Ilka Brandmoor", exampleSets, "2026-05-21"])).toThrow(
    /^as_of is blank: .*Where a table before it is left out, leave its place empty\.$/,
  );
});

test("loads beside athletes go row by row, one for all, or many for one", () => {
  const beside = (athletes: unknown, values: unknown) => {
    const { athletes: asked, cellAt } = alignedWith(athletes, values, "loads");
    return [asked, cellAt(0), cellAt(1)];
  };
  const two = [["Ilka Brandmoor"], ["Kofi Anstruther"]];
  expect(beside(two, 65)).toEqual([two, 65, 65]);
  expect(beside(two, [[65], [70]])).toEqual([two, 65, 70]);
  expect(beside("Ilka Brandmoor", [["Load"], [65], [70], [""], [""]])).toEqual([
    [["Ilka Brandmoor"], ["Ilka Brandmoor"]],
    65,
    70,
  ]);
  expect(beside("Ilka Brandmoor", [[65], [70]])).toEqual([
    [["Ilka Brandmoor"], ["Ilka Brandmoor"]],
    65,
    70,
  ]);
  const headed = [["Athlete"], ...two];
  expect(beside(headed, [["Load"], [65], [70]])).toEqual([headed, 65, 70]);
  const across = [["Ilka Brandmoor", "Kofi Anstruther"]];
  expect(beside(across, [[65, 70]])).toEqual([across, 65, 70]);
  const table = [
    ["Athlete", "Group"],
    ["Ilka Brandmoor", "A"],
    ["Kofi Anstruther", "B"],
  ];
  expect(beside(table, [["Load"], [65], [70]])).toEqual([table, 65, 70]);
  expect(() => alignedWith(two, [[65], [70], [75]], "loads")).toThrow("loads has 3 rows");
  expect(() =>
    alignedWith(
      two,
      [
        [65, 1],
        [70, 2],
      ],
      "loads",
    ),
  ).toThrow("loads is more than one column");
});

test.each([
  [
    "0.71 0.70 then 0.74 0.75",
    [
      [0.71, 0.7],
      [0.74, 0.75],
    ],
  ],
  ["0.71\n\n0.74", [[0.71], [0.74]]],
  [0.86, [[0.86]]],
])("%p typed beside a marker is speeds", (cell, sets) => {
  expect(seenToday(cell)).toEqual({ kind: "speeds", sets });
});

test("what is typed beside a marker may be blank, a word, or is answered in its own cell", () => {
  expect([seenToday(""), seenToday("then")]).toEqual([{ kind: "nothing" }, { kind: "nothing" }]);
  expect(seenToday("As  usual")).toEqual({ kind: "by eye", word: "usual" });
  expect(seenToday("86")).toEqual({
    kind: "unread",
    say: "86 is not a bar speed in m/s. Type 0.86?",
  });
  expect(seenToday(-0.5)).toMatchObject({ kind: "unread" });
  expect(seenToday("0.7 x then no")).toMatchObject({ kind: "unread" });
});

test("speeds in a row of cells: blanks at the end are no repetitions, gaps and doubts are refused", () => {
  const loss = (...cells: unknown[]) => call("VELOCITY_LOSS", [cells]);
  expect(loss(0.7, 0.63, "", "")).toBeCloseTo(0.1, 9);
  expect(loss("0.70 0.63")).toBeCloseTo(0.1, 9);
  for (const [cells, sentence] of [
    [["", ""], "speeds is blank"],
    [[0.7, "", 0.63], "The speed of repetition 2 is missing"],
    [["0.7 x 0.63"], "The speed of repetition 2 is missing"],
    [["0.7 0.6?"], "Not a speed"],
    [[true, 0.6], "Not a speed"],
    [[0.7, 63], "Repetition 2 has a speed of 63 m/s"],
  ] as const)
    expect(() => loss(...cells)).toThrow(sentence);
});

test("columns with nothing to work on, and results of several columns beside a sentence", () => {
  expect(() => call("FLIGHT_HEIGHT", [[""], [""]])).toThrow("flight_time is blank");
  expect(call("NEXT_BLOCK", [["5x5"], ["six"]], 70, "y", "y", "y", 100, 2.5)).toMatchObject([
    ["3×5", 72.5, expect.any(String)],
    [expect.stringMatching(/six/), "–", "–"],
  ]);
  expect(call("FLIGHT_HEIGHT", [0.5, 0.5])).toHaveLength(2);
});
