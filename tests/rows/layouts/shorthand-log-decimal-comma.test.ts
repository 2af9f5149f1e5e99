import { understandTable } from "../../../src/rows/read-table";
import { csvCells } from "./csv-cells";
import { counts, notes, problems, shortJump, shortSet } from "./short";

describe.each(["numbers", "text"] as const)("a German shorthand log, cells as %s", (as) => {
  const cells = csvCells("03-shorthand-log-decimal-comma.csv", as);
  const read = () => understandTable("Sets", cells);

  test("kg × reps × sets, decimal commas and points mixed, the year written once", () => {
    const { reading, layout } = read();
    expect(layout).toBe("rows of several sets");
    expect(reading.records.map(shortSet)).toEqual([
      "05-05 Ilka 1 65x5 0.66",
      "05-05 Ilka 2 65x5 0.65",
      "05-05 Ilka 3 65x5 0.64",
      "05-07 Brandmor I. 1 65x5 0.67",
      "05-07 Brandmor I. 2 65x5 0.66",
      "05-07 Brandmor I. 3 65x5",
      "05-12 ilka b 1 67.5x5 0.62",
      "05-12 ilka b 2 67.5x5 0.62",
      "05-12 ilka b 3 67.5x5 0.6",
      "05-14 Ilka 1 67.5x5",
      "05-14 Ilka 2 67.5x5",
      "05-14 Ilka 3 67.5x5",
      "05-05 Kofi 1 95x5 0.62",
      "05-05 Kofi 2 95x5",
      "05-05 Kofi 3 95x5",
      "05-05 Kofi 4 95x5",
      "05-05 Kofi 5 95x5",
      "05-07 Kofi A. 1 105x5 0.63",
      "05-07 Kofi A. 2 105x5 0.62",
      "05-07 Kofi A. 3 105x5 0.62",
      "05-07 Kofi A. 4 105x5 0.61",
      "05-07 Kofi A. 5 105x5 0.6",
      "05-12 K. Anstruther 1 105x5 0.62",
      "05-12 K. Anstruther 2 105x5 0.61",
      "05-12 K. Anstruther 3 105x5 0.61",
      "05-12 K. Anstruther 4 105x5 0.6",
      "05-12 K. Anstruther 5 105x3 0.57",
      "05-12 Oona 1 57.5x5 0.63",
      "05-12 Oona 2 57.5x5",
      "05-12 Oona 3 57.5x5",
      "05-19 Oona 1 57.5x5 0.64",
      "05-19 Oona 2 57.5x5 0.63",
    ]);
  });

  test("a range of reps in reserve is taken at its lower end", () => {
    expect(read().reading.records.find(({ athlete }) => athlete === "ilka b")?.repsInReserve).toBe(
      2,
    );
  });

  test("wie Di copies load and scheme of that week's Tuesday, said to be a near spelling", () => {
    const { reading } = read();
    expect(problems(reading)).toEqual(["C6 copied-from-near-name: wie Di"]);
    expect(reading.issues[0]?.facts).toEqual({ from: "ilka b", earlierRow: 5 });
  });

  test("Radfahren is no lift, Schnitt no athlete, the box row a jump; notes stay notes", () => {
    const { reading } = read();
    expect(notes(reading)).toEqual(["D11 Oona P: Radfahren; 20 min; DNS Kraft"]);
    expect(reading.records.filter(({ note }) => note !== "").map(({ note }) => note)).toEqual([
      "letzter Satz nicht gemessen",
      "schwere Beine, 12x400 gestern",
      "letzter Satz nur 3",
      "RIR geschätzt",
      "Rennwoche",
    ]);
    expect(counts(reading)).toEqual([10, 0, 1, 3]);
    const jumps = understandTable("Jumps", cells).reading;
    expect(jumps.records.map(shortJump)).toEqual(["05-05 I. Brandmoor 15 15 15 15 15 5 ?"]);
    expect(jumps.records[0]).toMatchObject({
      test: "Kasten gestr. Beine",
      note: "2. Versuch sauber",
    });
    expect(counts(jumps)).toEqual([1, 0, 1, 12]);
  });
});
