import { understandTable } from "../../../src/rows/read-table";
import { csvCells } from "./csv-cells";
import { counts, notes, problems, shortSet } from "./short";

describe.each(["numbers", "text"] as const)("a squad grid of wide weeks, cells as %s", (as) => {
  const cells = csvCells("01-squad-grid-wide-weeks.csv", as);
  const read = () => {
    const { reading, layout } = understandTable("Sets", cells);
    return { reading, layout, firstSets: reading.records.filter(({ set }) => set === 1) };
  };

  test("nine athletes, 43 gym cells, 40 of them with the best rep of the first set", () => {
    const { reading, layout, firstSets } = read();
    const cellsOfSets = new Set(reading.records.map(({ athlete, day }) => `${athlete} ${day}`));
    expect(layout).toBe("dates across");
    expect(new Set(reading.records.map(({ athlete }) => athlete)).size).toBe(9);
    expect(cellsOfSets.size).toBe(43);
    expect(firstSets).toHaveLength(43);
    expect(firstSets.filter(({ setSpeed }) => setSpeed !== null)).toHaveLength(40);
    expect(reading.records.filter(({ set, setSpeed }) => set !== 1 && setSpeed !== null)).toEqual(
      [],
    );
    expect(
      firstSets.every(({ setSpeed, setSpeedIs }) => setSpeed === null || setSpeedIs === "best rep"),
    ).toBe(true);
    expect(new Set(reading.records.map(({ exercise }) => exercise))).toEqual(
      new Set(["back squat"]),
    );
  });

  test("kg × sets × reps, Monday's date in the header, Tue and Thu below", () => {
    const { reading, firstSets } = read();
    const of = (name: string) => firstSets.filter(({ athlete }) => athlete === name).map(shortSet);
    expect(of("Ilka B")).toEqual([
      "05-05 Ilka B 1 65x5 0.66",
      "05-07 Ilka B 1 65x5 0.67",
      "05-12 Ilka B 1 67.5x5 0.62",
      "05-14 Ilka B 1 67.5x5",
      "05-19 Ilka B 1 67.5x5 0.63",
      "05-21 Ilka B 1 67.5x5 0.61",
    ]);
    expect(of("Oona").at(-1)).toBe("05-19 Oona 1 57.5x5 0.64");
    const sets = (name: string, day: string) =>
      reading.records.filter((set) => set.athlete === name && shortSet(set).startsWith(day)).length;
    expect([sets("Kofi", "05-05"), sets("Priya T", "05-12"), sets("Priya T", "05-19")]).toEqual([
      5, 3, 2,
    ]);
  });

  test("bike only, ill, -, DNS and empty cells are no session; words are notes, none is lost", () => {
    const { reading } = read();
    expect(problems(reading)).toEqual([]);
    expect(notes(reading)).toEqual([
      "K6 Dario: out – back w/c 1/6?",
      "I6 Dario: ill",
      "E7 Priya T: tired. 5h sleep",
      "E8 Oona: 1/wk only",
      "E9 Hamid: 9 days post",
      "H9 Hamid: no speeds - flat battery",
      "C9 Hamid: bike only",
      "H12 Tomas R: nights @ work",
      "E14 Wren: no speed Tue",
      "H14 Wren: knees in last 2",
    ]);
    expect(reading.records.find(({ note }) => note !== "")).toMatchObject({
      athlete: "Joss W",
      note: "bar slipped, redo",
      loadKg: 77.5,
      setSpeed: 0.65,
    });
    // Two titles, two header rows, ROAD, TRACK, AVG and max are headings.
    expect(counts(reading)).toEqual([9, 0, 0, 8]);
  });
});
