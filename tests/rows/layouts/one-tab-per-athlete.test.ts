import { understandTable } from "../../../src/rows/read-table";
import { csvCells } from "./csv-cells";
import { counts, notes, problems, shortJump, shortSet, today } from "./short";

describe.each(["numbers", "text"] as const)("one tab an athlete, cells as %s", (as) => {
  const cells = csvCells("02-one-tab-per-athlete.csv", as);
  const read = () => {
    const { reading, layout } = understandTable("Sets", cells, { today });
    const squats = reading.records.filter(({ exercise }) => exercise === "SQUAT");
    return { reading, layout, squats };
  };

  test("17 squat sets: 13 work, 4 warm-ups of which three are the fixed marker set", () => {
    const { reading, layout, squats } = read();
    expect(layout).toBe("blocks one under another");
    expect(squats).toHaveLength(17);
    expect(squats.filter(({ kind }) => kind === "work")).toHaveLength(13);
    expect(squats.filter(({ kind }) => kind === "warm-up").map(shortSet)).toEqual([
      "05-26 Kofi Anstruther warm-up 60x? 1.08 1.11 1.1",
    ]);
    expect(squats.filter(({ kind }) => kind === "marker").map(({ row }) => row)).toEqual([
      7, 20, 30,
    ]);
    expect(new Set(reading.records.map(({ athlete }) => athlete))).toEqual(
      new Set(["Kofi Anstruther"]),
    );
  });

  test("ditto marks, as above and empty cells repeat the load above; 0..70 is reported, not mended", () => {
    const { reading, squats } = read();
    const work = squats.filter(({ kind }) => kind === "work").map(shortSet);
    expect(work.slice(0, 5).map((set) => set.split(" ")[4])).toEqual(Array(5).fill("107.5x?"));
    expect(work.slice(-3)).toEqual([
      "06-02 Kofi Anstruther 1 97.5x? 0.71 0.7 0.7 0.69 0.68",
      "06-02 Kofi Anstruther 2 97.5x?",
      "06-02 Kofi Anstruther 3 97.5x? - 0.7 0.69 0.68 0.67",
    ]);
    expect(problems(reading)).toEqual([
      "I18 bar-unsettled: school hall – their bar (15?)",
      "C33 not-a-number: 0..70",
    ]);
    expect(reading.issues.every(({ facts }) => facts.mend === undefined)).toBe(true);
  });

  test("Thursday's bar is unknown: its loads wait, its speeds and its stopped sets stay", () => {
    const { squats } = read();
    const thursday = squats.filter(({ gym }) => gym === "school hall");
    expect(thursday.map(({ loadKg, barKg }) => [loadKg, barKg])).toEqual(
      Array(6).fill([null, null]),
    );
    expect(
      thursday.slice(4).map(({ repSpeeds, movedWell, note }) => [repSpeeds, movedWell, note]),
    ).toEqual([
      [[0.53, 0.52, 0.5, 0.47], null, "drifting fwd, cut it"],
      [[0.48, 0.46], false, "stopped!! nothing eaten since 7am"],
    ]);
    expect(squats.filter(({ gym }) => gym === "").every(({ barKg }) => barKg === 20)).toBe(true);
  });

  test("16/hand is per hand, six each side, two sets", () => {
    const { reading } = read();
    const others = reading.records.filter(({ exercise }) => exercise !== "SQUAT");
    expect(
      others.map(({ exercise, loadKg, loadPerHand, reps }) => [
        exercise,
        loadKg,
        loadPerHand,
        reps,
      ]),
    ).toEqual(Array(2).fill(["RFESS opp hand", 16, true, 6]));
    expect(counts(reading)).toEqual([18, 0, 3, 12]);
  });

  test("jump rows: stack, then o, xo, xx-; skipped is no test; the shin is surfaced", () => {
    const jumps = understandTable("Jumps", cells, { today }).reading;
    expect(jumps.records.map(shortJump)).toEqual([
      "05-26 Kofi Anstruther 15 15 15 15 15 5 ✓",
      "05-26 Kofi Anstruther 15 15 15 15 15 10 ✗",
      "05-26 Kofi Anstruther 15 15 15 15 15 10 ✓",
      "05-26 Kofi Anstruther 15 15 15 15 15 10 5 ✗",
      "05-26 Kofi Anstruther 15 15 15 15 15 10 5 ✗",
    ]);
    expect(problems(jumps)).toEqual([]);
    expect(notes(jumps)).toContain("I16 Kofi Anstruther: stop. shin");
    expect(notes(jumps)).toContain("B26 Kofi Anstruther: no plates – skipped");
  });

  test("without a day asked about, dates without a year are reported, not guessed", () => {
    const undated = understandTable("Sets", cells).reading;
    expect(undated.records).toEqual([]);
    expect(
      undated.issues.filter(({ code }) => code === "year-missing").map(({ cell }) => cell),
    ).toEqual(["A4", "A18", "A28"]);
  });
});
