import { catalogue } from "../../src/catalogue";
import { exampleDiary, exampleJumps, exampleSets } from "../../src/catalogue/example-rows";

const call = (name: string, ...args: unknown[]) =>
  catalogue.find((entry) => entry.name === name)!.compute(args) as unknown[][];
const asOf = "2026-05-21";
const both = [["Athlete"], ["Tomas Reyerson"], ["Ilka Brandmoor"]];
const runs = [
  ["date", "athlete", "minutes", "exertion"],
  ["2026-05-18", "Tomas Reyerson", 60, 7],
  ["2026-05-20", "Tomas Reyerson", 40, ""],
  ["2026-05-19", "Ilka Brandmoor", 30, 5],
];

test("unusual days: every row carries its athlete, and a calm season says so", () => {
  const rows = call("UNUSUAL_DAYS", both, exampleSets, exampleJumps, exampleDiary, "", "", asOf);
  expect(rows.map(([name]) => name)).toEqual(["Tomas Reyerson", "Ilka Brandmoor"]);
  expect(rows[0]![4]).toBe("no day beyond the athlete's own wobble in 14 sessions");
  expect(rows[1]![1]).toBe("2026-05-07");
});

test("races for groups that names alone do not know are told beside each athlete's first day", () => {
  const races = [
    ["Date", "Race", "Who"],
    ["2026-05-06", "Mill mile", "track; road"],
    ["2026-05-06", "Club run", "all"],
    ["2026-05-30", "Hill relay", "hills"],
  ];
  const words = (athletes: unknown) =>
    call("UNUSUAL_DAYS", athletes, exampleSets, exampleJumps, exampleDiary, "", races, asOf).map(
      (row) => String(row[4]),
    );
  const left = "; races for track and road not counted: give the Athletes table with its groups";
  const [tomas, ilka] = words(both);
  expect(tomas).toBe(`no day beyond the athlete's own wobble in 14 sessions${left}`);
  expect(ilka).toMatch(/^sleep 5 h.*Club run.*/);
  expect(ilka!.endsWith(left)).toBe(true);
  const table = [
    ["Athlete", "Group"],
    ["Ilka Brandmoor", "track"],
  ];
  expect(words(table)[0]).toContain("Mill mile");
  expect(words(table).join()).not.toContain("not counted");
});

test("words of pain stand before everything else, and no statistics come before them", () => {
  const diary = [...exampleDiary, ["2026-05-12", "Ilka Brandmoor", 7.5, 2, "shin sore at night"]];
  const rows = call("WHAT_DIFFERED", "Ilka Brandmoor", exampleSets, exampleJumps, diary, "", asOf);
  expect(rows[0]!.slice(0, 3)).toEqual(["Ilka Brandmoor", "look first", "–"]);
  expect(rows[0]![8]).toMatch(/12 May \(sore\).*doctor or physiotherapist/);
});

test("what differed: each athlete's items, then all together", () => {
  const rows = call("WHAT_DIFFERED", both, exampleSets, exampleJumps, exampleDiary, "", asOf);
  const names = [...new Set(rows.map(([name]) => name))];
  expect(names).toEqual(["Tomas Reyerson", "Ilka Brandmoor", "all together"]);
  for (const row of rows) {
    expect(row).toHaveLength(9);
    expect(String(row[8])).toMatch(/\d+ days?/);
    expect(String(row[8])).not.toMatch(/because/i);
  }
});

test("an athlete without diary or runs is refused in words", () => {
  const without = (athletes: unknown) =>
    call("WHAT_DIFFERED", athletes, exampleSets, exampleJumps, "", "", asOf);
  expect(() => without("Ilka Brandmoor")).toThrow("Nothing to compare for Ilka Brandmoor");
  expect(without(both)[1]!.slice(0, 2)).toEqual([
    "Ilka Brandmoor",
    expect.stringContaining("Nothing to compare for Ilka Brandmoor"),
  ]);
});

test("run load: an unrated run refuses the sum by its row, seven equal days have no monotony", () => {
  const rows = call("RUN_LOAD", both, runs, asOf);
  expect(rows[0]![0]).toMatch(/The run in row 3 has no exertion or no minutes/);
  expect(rows[0]!.slice(1)).toEqual(Array(10).fill("–"));
  expect(rows[1]!.slice(0, 2)).toEqual([0, 150]);
  const equal = [
    runs[0]!,
    ...[15, 16, 17, 18, 19, 20, 21].map((day) => [`2026-05-${day}`, "Ilka Brandmoor", 30, 5]),
  ];
  const [alike] = call("RUN_LOAD", "Ilka Brandmoor", equal, asOf);
  const words = "7 runs; all seven days alike, so no monotony";
  expect(alike).toEqual([150, 1050, "–", "–", ...Array(6).fill(150), words]);
  const [rest] = call("RUN_LOAD", "Ilka Brandmoor", equal, "2026-05-28");
  const none = "no run in the rows of these seven days";
  expect(rest).toEqual([0, 0, "–", "–", ...Array(6).fill(0), none]);
  const notDone = [runs[0]!, ["2026-05-21", "Ilka Brandmoor", 0, 5]];
  expect(() => call("RUN_LOAD", "Ilka Brandmoor", notDone, asOf)).toThrow(
    "A run of 0 minutes in row 2 is not possible",
  );
  expect(() => call("RUN_LOAD", "Ilka Brandmoor", "", asOf)).toThrow("runs is blank");
});

test.each([
  ["UNUSUAL_DAYS", [exampleSets, exampleJumps, exampleDiary, "", "", asOf]],
  ["WHAT_DIFFERED", [exampleSets, exampleJumps, exampleDiary, "", asOf]],
  ["RUN_LOAD", [runs, asOf]],
])("%s: an athlete of no row is said in that row, a blank cell stays blank", (name, rest) => {
  const sentence = /^No row of Wren Castellow in .*check the spelling and the date/;
  expect(() => call(name, "Wren Castellow", ...rest)).toThrow(sentence);
  const rows = call(name, [["Wren Castellow"], [""], ["Ilka Brandmoor"]], ...rest);
  expect(rows[0]!.filter((cell) => sentence.test(String(cell)))).toHaveLength(1);
  expect(new Set(rows[1])).toEqual(new Set([""]));
});

test("before about eight sessions no day is called unusual", () => {
  const first = exampleSets.filter(
    ([day, who]) => who === "Ilka Brandmoor" && String(day) < "2026-04-15",
  );
  const rows = [exampleSets[0]!, ...first];
  // Sessions on 7, 9 and 14 April.
  expect(() => call("UNUSUAL_DAYS", "Ilka Brandmoor", rows, "", "", "", "", asOf)).toThrow(
    "Too few rows of Ilka Brandmoor: 3 sessions with a speed or a jump; about eight are needed",
  );
});

test("runs alone are something to compare, but with no day of performance", () => {
  const [row] = call("WHAT_DIFFERED", "Ilka Brandmoor", "", "", "", runs, asOf);
  expect(row!.slice(0, 3)).toEqual(["Ilka Brandmoor", "run the day before", "–"]);
  expect(row![8]).toMatch(/^Not enough days to say/);
});
