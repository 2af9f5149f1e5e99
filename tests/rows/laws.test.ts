import vm from "node:vm";
import fc from "fast-check";
import type { LiftingSet } from "../../src/coaching/record/lifting-set";
import { readSets } from "./readers";

const head = ["Date", "Athlete", "Exercise", "Set", "Load (kg)", "Rep 1", "Rep 2", "Movement ok?"];
const speed = fc.integer({ min: 30, max: 140 }).map((hundredths) => hundredths / 100);
const line = fc.tuple(
  fc.integer({ min: 0, max: 120 }).map((day) => new Date(2026, 3, 6 + day)),
  fc.constantFrom("Ilka Brandmoor", "Kofi Anstruther", "Wren Castellow"),
  fc.constantFrom("back squat", "split squat"),
  fc.integer({ min: 1, max: 5 }),
  fc.integer({ min: 8, max: 60 }).map((steps) => steps * 2.5),
  speed,
  speed,
  fc.constantFrom("y", "n", ""),
);
const table = fc.array(line, { minLength: 1, maxLength: 25 });
const read = (cells: unknown[][]) => readSets(cells).records;
const bare = (sets: readonly LiftingSet[]) => sets.map((set) => ({ ...set }));

test("the order of columns and columns of the coach's own change nothing", () => {
  const order = fc.shuffledSubarray([...head.keys(), head.length], { minLength: head.length + 1 });
  fc.assert(
    fc.property(table, order, (lines, places) => {
      const cells = [[...head, "Weather"], ...lines.map((cells) => [...cells, "rain"])];
      const shuffled = cells.map((row) => places.map((place) => row[place]));
      expect(bare(read(shuffled))).toEqual(bare(read(cells)));
    }),
  );
});

test("numbers written as text with a decimal comma are the same numbers", () => {
  fc.assert(
    fc.property(table, (lines) => {
      const written = lines.map((cells) =>
        cells.map((cell) => (typeof cell === "number" ? String(cell).replace(".", ",") : cell)),
      );
      expect(read([head, ...written])).toEqual(read([head, ...lines]));
    }),
  );
});

test("a load in pounds is the load times 0.45359237 kg (NIST SP 811)", () => {
  fc.assert(
    fc.property(table, (lines) => {
      const pounds = head.map((heading) => heading.replace("(kg)", "(lb)"));
      const kg = read([head, ...lines]);
      read([pounds, ...lines]).forEach((set, at) => {
        expect(set.loadKg).toBeCloseTo((kg[at]?.loadKg ?? 0) * 0.45359237, 9);
      });
    }),
  );
});

test("blank rows at the end add to the blank count alone", () => {
  fc.assert(
    fc.property(table, fc.integer({ min: 0, max: 40 }), (lines, blanks) => {
      const padding = Array.from({ length: blanks }, () => head.map(() => ""));
      const plain = readSets([head, ...lines]);
      expect(readSets([head, ...lines, ...padding])).toEqual({
        ...plain,
        rowsBlank: plain.rowsBlank + blanks,
      });
    }),
  );
});

test("one row a repetition says the same as one column a repetition", () => {
  fc.assert(
    fc.property(table, (lines) => {
      const numbered = lines.map((cells, at) => [
        ...cells.slice(0, 3),
        (at % 60) + 1,
        ...cells.slice(4),
      ]);
      const long = numbered.flatMap(([date, who, lift, set, load, one, two, ok]) => [
        [date, who, lift, set, 1, load, one, ok],
        [date, who, lift, set, 2, load, two, ok],
      ]);
      const wide = read([head, ...numbered]);
      const put = read([
        ["Date", "Athlete", "Exercise", "Set", "Rep", "Load (kg)", "Speed", "Movement ok?"],
        ...long,
      ]);
      expect(put.map(({ repSpeeds, loadKg, movedWell }) => [repSpeeds, loadKg, movedWell])).toEqual(
        wide.map(({ repSpeeds, loadKg, movedWell }) => [repSpeeds, loadKg, movedWell]),
      );
    }),
  );
});

test("dates of another realm, as the spreadsheet hands them over, are dates", () => {
  const date = vm.runInNewContext("new Date(2026, 4, 12, 18, 5)");
  const [set] = read([head, [date, "Ilka", "squat", 1, 65, 0.66, 0.64, "y"]]);
  expect(set).toMatchObject({ day: 20585, minute: 1085 });
});
