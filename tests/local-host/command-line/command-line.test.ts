import { spawn } from "node:child_process";
import { cpSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { holdline, root } from "./run-program";

const byHand = join(__dirname, "../by-hand");

test("a reader who leaves after the first lines hears no complaint", async () => {
  const child = spawn(process.execPath, [join(root, "dist/local/holdline.cjs"), "check"]);
  child.stdout.destroy();
  let err = "";
  child.stderr.on("data", (part) => {
    err += part;
  });
  const status = await new Promise((resolve) => child.on("close", resolve));
  expect([status, err]).toEqual([1, expect.not.stringMatching(/EPIPE|Error/)]);
}, 60_000);

describe("squad", () => {
  test("shows the sample squad, one line an athlete, without a workbook named", async () => {
    const { status, out, err } = await holdline("squad");
    expect([status, err]).toEqual([0, ""]);
    const lines = out.split("\n");
    expect(lines[0]).toBe("sample-sheets, 2026-06-28");
    expect(lines[2]).toMatch(/^Athlete +May do +Word +Since +Value +From baseline +Wobble/);
    expect(lines.slice(4, 16).map((line) => line.split(/ {2,}/)[0])).toEqual([
      "Ilka Brandmoor",
      "Tomas Reyerson",
      "Wren Castellow",
      "Kofi Anstruther",
      "Oona Petrakell",
      "Dario Quell",
      "Priya Tellander",
      "Hamid Sorley",
      "Bea Lindqvale",
      "Nils Quarrington",
      "Joss Whitterby",
      "Maren Aspholt",
    ]);
    // Columns stand under one another.
    const at = lines[2]!.indexOf("Word");
    expect(lines.slice(4, 16).every((line) => /\s\s\S/.test(line.slice(at - 2, at + 1)))).toBe(
      true,
    );
  });

  test("as of an earlier day knows nothing of what came later", async () => {
    const { status, out } = await holdline(
      "squad",
      "sample-sheets",
      "--as-of",
      "2026-05-05",
      "--json",
    );
    expect(status).toBe(0);
    const { asOf, columns, rows } = JSON.parse(out) as {
      asOf: string;
      columns: string[];
      rows: unknown[][];
    };
    expect([asOf, columns[2]]).toEqual(["2026-05-05", "Word"]);
    expect(rows).toHaveLength(12);
    expect(rows.map(([, , word]) => word)).not.toContain("slipping");
    expect(rows.find(([name]) => name === "Maren Aspholt")?.[2]).toMatch(/^too few rows/);
  });
});

describe("formula", () => {
  test("gives rows of cells as JSON, dates as ISO text", async () => {
    // Rows 3 and 4 are the first marker and the first work set of 7 April.
    const { status, out } = await holdline("formula", "sample-sheets", "=Sets!A3:C4", "--json");
    expect(status).toBe(0);
    expect(JSON.parse(out)).toEqual([
      ["2026-04-07", "18:00", "Ilka Brandmoor"],
      ["2026-04-07", "18:00", "Ilka Brandmoor"],
    ]);
  });

  test("a refusal is a sentence on standard error and status 1", async () => {
    const refused = await holdline(
      "formula",
      "sample-sheets",
      '=STRENGTH_ESTIMATE("Nobody Here", Sets!A:Q, "back squat", "2026-06-28")',
    );
    expect([refused.status, refused.out]).toEqual([1, ""]);
    expect(refused.err).toMatch(/^[A-Z].*\.\n$/);
    expect((await holdline("formula", "sample-sheets", "=NO_SUCH(1)")).err).toMatch(
      /^#NAME\?: the formula/,
    );
  });
});

describe("check", () => {
  test("names the sample's five slips by tab and cell, says how many rows were read, and ends with 1", async () => {
    const { status, out, err } = await holdline("check", "sample-sheets");
    expect(status).toBe(1);
    expect(err).toBe("5 places need a look.\n");
    const lines = out.split("\n");
    const cells = lines.filter((line) => /^(Sets|Diary) [A-Z]+\d+ /.test(line));
    expect(cells.slice(0, 4).map((line) => line.replace(/ {2,}.*/, "").split(" ")[0])).toEqual([
      "Sets",
      "Sets",
      "Sets",
      "Diary",
    ]);
    expect(out).toMatch(/Sets I\d+ .* 62 /);
    expect(out).toMatch(/Type 0\.62 for 62/);
    expect(out).toMatch(/Sets H\d+ +no load/);
    expect(out).toMatch(
      /(Sets|Jumps|Diary|Runs) [A-Z]+\d+ +Tomas Reyersen +1 row +Is this Tomas Reyerson\?/,
    );
    // Of every row but headings, one is left out: the doubled set.
    const [, read, all] = /^([\d,]+) of ([\d,]+) rows read, 1 under/m.exec(out)!;
    const number = (text: string) => Number(text.replace(",", ""));
    expect(number(all!) - number(read!)).toBe(1);
  });
});

describe("workbooks made by hand, with other tabs, headers and orders of columns", () => {
  test("a folder in German with pounds and decimal commas: who slips, since when", async () => {
    const winter = join(byHand, "winter-log");
    const { status, out } = await holdline("squad", winter, "--as-of", "2026-04-19", "--json");
    expect(status).toBe(0);
    const { rows } = JSON.parse(out) as { rows: unknown[][] };
    // By hand: 12 % off all speeds from the eighth Tuesday, 13 January + 49 days.
    expect(rows[0]!.slice(0, 3)).toEqual(["Ottoline Marsh", "not given", "slipping"]);
    expect(rows[0]![3]).toMatch(/^3 Mar/);
    expect(rows[0]![5]).toBeCloseTo(-0.12, 2);
    expect(rows[1]!.slice(0, 3)).toEqual(["Pim Dorrant", "not given", "holding"]);
    const checked = await holdline("check", winter, "--json");
    expect(checked.status).toBe(1);
    const { problems, names, summary } = JSON.parse(checked.out);
    expect(
      problems.map(({ cell, found }: { cell: string; found: string }) => [cell, found]),
    ).toEqual([["Kraftraum E17", "“58”"]]);
    expect(names).toEqual([
      expect.objectContaining({ name: "Otoline Marsh", rows: 1, near: ["Ottoline Marsh"] }),
    ]);
    expect(names[0].cell).toMatch(/^[A-Z]+\d+$/);
    // 56 sets, 28 jumps and 2 athletes were typed.
    expect(summary).toBe("86 of 86 rows read, 1 under a name that is not among the athletes");
  });

  test("one tab an athlete and no table of athletes: every tab counts", async () => {
    const folder = mkdtempSync(join(tmpdir(), "holdline-tabs-"));
    try {
      const sessions = Array.from({ length: 14 }, (_, week) => {
        const day = new Date(Date.UTC(2026, 1, 3 + 7 * week)).toISOString().slice(0, 10);
        return { day, late: week >= 8, wobble: [0.01, 0, -0.01][week % 3]! };
      });
      for (const [athlete, fall] of [
        ["Ottoline Marsh", 0],
        ["Pim Dorrant", 0.07],
      ] as const) {
        const lines = sessions.flatMap(({ day, late, wobble }) =>
          [1, 2].map((set) => {
            const speed = 0.7 - (late ? fall : 0) + wobble - 0.01 * set;
            return `${day},Back squat,${set},80,5,${speed.toFixed(2)}`;
          }),
        );
        const text = ["Date,Exercise,Set,Load (kg),Reps,Speed (m/s)", ...lines].join("\n");
        writeFileSync(join(folder, `${athlete}.csv`), `${athlete}\n\n${text}\n`);
      }
      writeFileSync(
        join(folder, "Kit.csv"),
        "Name,Phone,Email,Notes\nOttoline Marsh,555,ottoline,mornings\n",
      );
      const { status, out, err } = await holdline("squad", folder, "--as-of", "2026-05-06");
      expect([status, err]).toEqual([0, "1 place needs a look: the command check lists them.\n"]);
      // By hand: 10 % off from the ninth Tuesday, 3 February + 56 days.
      expect(out).toMatch(/^Pim Dorrant +not given +slipping +31 Mar/m);
      expect(out).toMatch(/^Ottoline Marsh +not given +holding/m);
      expect(out).toMatch(/^Pim Dorrant: back squat speed \d+ % under baseline/m);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });

  test("a table in doubt is no part of the squad, and is told; sets in doubt are asked for", async () => {
    const folder = mkdtempSync(join(tmpdir(), "holdline-doubt-"));
    try {
      writeFileSync(
        join(folder, "Athletes.csv"),
        "Athlete,Event,Experience\nPim Dorrant,800 m,trained\n",
      );
      writeFileSync(join(folder, "Kit.csv"), "Plate,How many\n20,8\n10,6\n");
      const log = (lift: string) =>
        writeFileSync(
          join(folder, "Log.csv"),
          `Date,Athlete,${lift}Set,Reps,kg\n2026-05-05,Pim Dorrant,${lift && "squat,"}1,5,80\n`,
        );
      log("Exercise,");
      const { status, out, err } = await holdline("squad", folder, "--as-of", "2026-05-06");
      expect([status, err]).toEqual([0, "1 place needs a look: the command check lists them.\n"]);
      expect(out).toMatch(/^Pim Dorrant +not given +too few rows/m);
      log("");
      expect((await holdline("squad", folder, "--as-of", "2026-05-06")).err).toBe(
        "The tab “Log” may be the Sets table. Open the workbook and say under Set up whether it is.\n",
      );
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });

  test("an .xlsx file with a title above the headings, one column a repetition", async () => {
    const spring = join(byHand, "spring-log.xlsx");
    const { out } = await holdline("squad", spring, "--as-of", "2026-05-05");
    expect(out).toMatch(/Ottoline Marsh +not given +holding/);
    // By hand: (0.67 − 0.64)/0.67 and (0.61 − 0.58)/0.61.
    const formula = await holdline("formula", spring, "=VELOCITY_LOSS('Log 26'!E4:G5)", "--json");
    const loss = JSON.parse(formula.out) as number[][];
    expect(loss.map(([x]) => x!.toFixed(4))).toEqual([
      (0.03 / 0.67).toFixed(4),
      (0.03 / 0.61).toFixed(4),
    ]);
    const checked = await holdline("check", spring);
    expect(checked.status).toBe(1);
    expect(checked.out).toMatch(/Log 26 A13 +“maybe”/);
    expect(checked.out).toMatch(/Log 26 C16 +“820”/);
    expect(checked.out).toMatch(/^22 of 22 rows read$/m);
  });

  test("a column that nobody explains is told, in plain text and as data, and is no slip", async () => {
    const folder = mkdtempSync(join(tmpdir(), "holdline-asked-"));
    const rows = "Date,Athlete,Exercise,Load,Zq\n2026-05-12,Ilka Brandmoor,squat,85,odd\n";
    writeFileSync(join(folder, "Sets.csv"), rows);
    const plain = await holdline("check", folder);
    const data = await holdline("check", folder, "--json");
    rmSync(folder, { recursive: true, force: true });
    const waiting = "To answer under Set up: In Sets, what is “Zq”?";
    expect(plain).toEqual({ status: 0, out: `1 of 1 row read\n${waiting}\n`, err: "" });
    expect(JSON.parse(data.out)).toMatchObject({ waiting, problems: [] });
  });

  test("a workbook without a slip ends with 0 and says nothing on standard error", async () => {
    const folder = mkdtempSync(join(tmpdir(), "holdline-clean-"));
    writeFileSync(join(folder, "Plates.csv"), "Mass (kg),Thickness (cm)\n20,4.3\n10,2.9\n");
    const { status, out, err } = await holdline("check", folder);
    rmSync(folder, { recursive: true, force: true });
    expect([status, out, err]).toEqual([0, "2 of 2 rows read\n", ""]);
  });
});

test("wrong usage ends with 2, a sentence and the usage; a workbook that is not there with 1", async () => {
  const wrong = await holdline("frobnicate");
  expect([wrong.status, wrong.out]).toEqual([2, ""]);
  expect(wrong.err).toMatch(
    /^There is no command “frobnicate”\.\n\n.*npm run -s holdline -- squad/s,
  );
  expect(await holdline("check", "nowhere.xlsx")).toEqual({
    status: 1,
    out: "",
    err: "There is no file or folder nowhere.xlsx. Check the name.\n",
  });
  const help = await holdline("--help");
  expect([help.status, help.err]).toEqual([0, ""]);
  expect(help.out).toContain("Exit status: 0 done; 1 problems found or refused");
});

test("open serves on this machine alone and ends when it is stopped", async () => {
  const folder = mkdtempSync(join(tmpdir(), "holdline-open-"));
  cpSync(join(byHand, "spring-log.xlsx"), join(folder, "log.xlsx"));
  const child = spawn(
    process.execPath,
    ["dist/local/holdline.cjs", "open", join(folder, "log.xlsx")],
    {
      cwd: root,
    },
  );
  const url = await new Promise<string>((resolve, reject) => {
    let said = "";
    child.stdout.on("data", (part) => {
      said += part;
      const found = /Open (http:\/\/127\.0\.0\.1:\d+\/[0-9a-f]+\/)\n/.exec(said);
      if (found) resolve(found[1]!);
    });
    child.on("close", () => reject(new Error(said)));
  });
  const page = await fetch(url);
  expect(page.status).toBe(200);
  const opened = (await (await fetch(`${url}workbook`)).json()) as {
    workbook: { tabs: { name: string }[] };
  };
  expect(opened.workbook.tabs.map(({ name }) => name)).toEqual(["Log 26", "People", "Notes"]);
  const closed = new Promise<number | null>((resolve) => child.on("close", resolve));
  child.kill("SIGINT");
  expect(await closed).toBe(0);
  rmSync(folder, { recursive: true, force: true });
});
