import { understandTable } from "../../../src/rows/read-table";
import { csvCells } from "./csv-cells";
import { counts, notes, problems, shortJump } from "./short";

describe.each(["numbers", "text"] as const)("three blocks of test days, cells as %s", (as) => {
  const read = () => {
    const { reading, layout } = understandTable(
      "Jumps",
      csvCells("05-jumps-wide-test-days.csv", as),
    );
    const of = (test: string, athlete: string) =>
      reading.records.filter((jump) => jump.test === test && jump.athlete === athlete);
    return { reading, layout, of };
  };

  test("block 1: stacks, misses with more plates, a jump not clean by its footnote; PB is no day", () => {
    const { layout, of } = read();
    expect(layout).toBe("dates across");
    expect(
      of("straight-leg box", "Brandmoor Ilka")
        .map(shortJump)
        .map((jump) => jump.replace("Brandmoor Ilka ", "")),
    ).toEqual([
      "04-14 15 15 15 15 15 5 ✓",
      "04-28 15 15 15 15 15 5 ✓",
      "05-26 15 15 15 15 15 5 ✓",
      "06-09 15 15 15 15 15 10 ✓",
      "06-23 15 15 15 15 15 5 ✓",
      "06-23 15 15 15 15 15 5 10 ✗",
    ]);
    expect(
      of("straight-leg box", "Kofi A.")
        .filter(({ cleared }) => cleared === false)
        .map(({ stackKg, note }) => [stackKg, note]),
    ).toEqual([
      [[15, 15, 15, 15, 15, 10, 5], ""],
      [[15, 15, 15, 15, 15, 10], "hands on knees"],
    ]);
    expect(
      ["Wren", "Joss Whitterby", "Bea L (U18)"].map((name) => of("straight-leg box", name).length),
    ).toEqual([5, 4, 4]);
  });

  test("block 2: contact and flight in ms and s, 17/.55 reported, the Achilles surfaced", () => {
    const { reading, of } = read();
    expect(
      of("drop jump", "Joss")
        .map(shortJump)
        .map((jump) => jump.slice(11)),
    ).toEqual(["0.191/0.5", "0.188/0.51", "0.196/0.5", "0.221/0.49", "0.243/0.49"]);
    expect(of("drop jump", "Ilka")[1]).toMatchObject({
      contactS: 0.185,
      flightS: 0.49,
      dropCm: 30,
    });
    expect(of("drop jump", "Kofi").at(-1)).toMatchObject({ contactS: null, flightS: 0.55 });
    expect(problems(reading)).toEqual(["F7 unsure: 46?", "H12 implausible: 17/.55"]);
    expect(notes(reading)).toEqual(["H11 Joss: Achilles"]);
  });

  test("block 3: the landing is raised onto three plates of 20; 390 is milliseconds", () => {
    const { reading } = read();
    const raised = reading.records.filter(
      ({ stackKg, dropCm }) => dropCm === 20 && stackKg.length > 0,
    );
    expect(raised).toHaveLength(12);
    expect(raised.every(({ stackKg }) => stackKg.join() === "20,20,20")).toBe(true);
    expect(raised.slice(-3).map(({ athlete, flightS }) => [athlete, flightS])).toEqual(
      Array(3).fill(["Wren C", 0.39]),
    );
  });

  test("ten athletes' rows read; titles, headers, footnote and mean are headings", () => {
    expect(counts(read().reading)).toEqual([10, 0, 0, 6]);
  });
});

test("figures of one cell have each the unit its part has in the title", () => {
  const { reading } = understandTable("Jumps", [
    ["Drop jump 30: contact ms / height in", "", ""],
    ["Athlete", "2026-05-12", "2026-05-19"],
    ["Ilka Brandmoor", "182/12", "190/11"],
  ]);
  expect(problems(reading)).toEqual([]);
  expect(reading.records).toMatchObject([
    { contactS: 0.182, heightCm: expect.closeTo(30.48) },
    { contactS: 0.19, heightCm: expect.closeTo(27.94) },
  ]);
});
