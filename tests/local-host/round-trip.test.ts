import { readFileSync } from "node:fs";
import { join } from "node:path";
import type {
  DiaryView,
  NameQuestion,
  RowCheckView,
  SetUpView,
  SquadView,
  WeekView,
} from "../../src/actions/messages";
import { requests } from "../../src/actions/requests";
import { readWorkbook } from "../../src/local-host/files/read-workbook";
import { readXlsx } from "../../src/local-host/files/xlsx/read-xlsx";
import { writeXlsx } from "../../src/local-host/files/xlsx/write-xlsx";
import { plainTab, type WorkbookData } from "../../src/local-host/workbook-data";
import { accept } from "../../src/outcome";
import type { TabMatter } from "../../src/rows/layout/tab-question";
import { csvCells } from "../rows/layouts/csv-cells";
import { opened } from "./opened";

// Whole workbooks are calculated and compared after every action.

const bundleSource = readFileSync(join(__dirname, "../../dist/code.js"), "utf8");
const own = new Set(["SQUAD_TABLE", "ROW_CHECK"]);
const today = "2026-06-28";
const value = <T>(outcome: { ok: true; value: T } | { ok: false }): T => {
  if (!outcome.ok) throw new Error("not read");
  return outcome.value;
};
/** An answer to each question about a whole tab. */
const wholeTab: Readonly<Record<TabMatter, string>> = {
  "scheme order": "repetitions × sets",
  exercise: "back squat",
  athlete: "Ilka Brandmoor",
  bar: "15 kg",
  "set speed": "fastest repetition",
  speeds: "one for each set",
  runs: "minutes",
};
const layouts = [
  "01-squad-grid-wide-weeks.csv",
  "02-one-tab-per-athlete.csv",
  "03-shorthand-log-decimal-comma.csv",
  "05-jumps-wide-test-days.csv",
];

const workbooks: Readonly<Record<string, () => Promise<WorkbookData>>> = {
  "the sample, written to .xlsx and read back": async () => {
    const sample = value(await readWorkbook(join(__dirname, "../../sample-sheets"), own));
    const bytes = value(await writeXlsx(sample.workbook, null));
    return value(await readXlsx("sample", bytes)).workbook;
  },
  "four layouts, a tab each": async () => ({
    name: "layouts",
    tabs: layouts.map((name) =>
      plainTab(
        name.replace(/^\d+-|\.csv$/g, ""),
        csvCells(name, "numbers").map((row) =>
          row.map((cell) => (cell === "" ? null : { value: cell as string | number })),
        ),
      ),
    ),
    names: [],
    properties: {},
  }),
  "an .xlsx made by hand": async () =>
    value(await readWorkbook(join(__dirname, "by-hand/spring-log.xlsx"), own)).workbook,
};

/** All of the coach's tabs that can be seen: values, formulas, formats, notes, looks, lists, widths. */
function coaches({ tabs }: WorkbookData, names: readonly string[]) {
  return tabs
    .filter(({ name }) => names.includes(name))
    .map(({ conditionalFormats: _ours, ...tab }) => tab);
}

const asked = new Set<string>();

test.each(Object.keys(workbooks))("%s: every action leaves every cell as it was", async (name) => {
  const { tabs, ...rest } = await workbooks[name]!();
  const host = await opened({}, { tabs, ...rest, bundleSource });
  const names = tabs.map((tab) => tab.name);
  const seen = () => coaches(host.workbook(), names);
  // The sample is large: one matter and one print there, all of them in the small workbooks.
  const some = names.includes("Squad") ? 1 : undefined;
  const before = seen();
  expect(before.flatMap(({ cells }) => cells.flat().filter(Boolean)).length).toBeGreaterThan(50);
  const run = async <Answer>(called: string, message: object = {}): Promise<Answer> => {
    asked.add(called);
    const answer = host.run(called, [message]) as Answer;
    await host.settled();
    expect([called, seen()]).toEqual([called, before]);
    return answer;
  };
  /** An action that writes one cell of the coach's, which it names; one Undo takes it back. */
  const runWriting = async (called: string, message: object, cell: string): Promise<void> => {
    asked.add(called);
    host.run(called, [message]);
    await host.settled();
    const changed = changedCells(before, seen()).filter(
      // Formulas of the coach's that look at the cell are calculated anew.
      ({ was }) => was?.formula === undefined,
    );
    expect([called, changed.map(({ at }) => at)]).toEqual([called, [cell]]);
    host.undo();
    await host.settled();
    expect([called, "undone", seen()]).toEqual([called, "undone", before]);
  };
  const squad = await run<SquadView>("squadView", { today });
  for (const { athlete } of squad.lines.slice(0, some ?? 2)) {
    await run("athleteView", { today, athlete });
    await run("diaryView", { today, athlete });
  }
  const checked = await run<RowCheckView>("rowCheck", { today });
  const [problem] = checked.problems;
  if (problem) await run("goToCell", { tabId: problem.tabId, cell: problem.cell });
  const unknown: NameQuestion | undefined = checked.names.find(({ near }) => near.length > 0);
  if (unknown) {
    const [athlete] = unknown.near;
    await run("answerName", { today, written: unknown.name, athlete, same: true });
    await run("answerName", { today, written: unknown.name, athlete, same: false });
    await run("forgetName", { today, written: unknown.name });
    await run("answerSet", { today, set: "2026-06-02 Tomas Reyerson" });
    await run("forgetSet", { today, set: "2026-06-02 Tomas Reyerson" });
  }
  const { questions, tabs: found } = await run<SetUpView>("setUpView", { today });
  const [{ tabId, table }] = found as [SetUpView["tabs"][number]];
  await run("answerTable", { today, tabId, table });
  await run("forgetTable", { today, tabId });
  const matters = Object.entries(wholeTab).slice(0, some);
  for (const [about, answer] of matters) {
    await run("answerTab", { today, tabId, about, written: "", answer });
    await run("forgetTab", { today, tabId, about, written: "" });
  }
  const [column] = questions.flatMap((question) => ("column" in question ? [question] : []));
  const place = column ?? { tabId, heading: "", column: 1 };
  await run("answerColumn", {
    today,
    tabId: place.tabId,
    heading: place.heading,
    column: place.column,
    field: null,
  });
  const { answered } = await run<SetUpView>("setUpView", { today });
  const [said] = answered.flatMap((answer) => ("column" in answer ? [answer] : []));
  await run("forgetColumn", {
    today,
    tabId: said!.tabId,
    column: said!.column,
    tag: said!.tag,
    about: said!.about,
  });
  await run("forgetDamaged", { what: "answers" });
  const week = await run<WeekView>("weekView", { today, monday: null, changes: [] });
  const { monday } = week;
  for (const kind of ["cards", "rack plan", "week page"].slice(0, some))
    await run("printPages", { today, kind, monday, changes: [] });
  if (week.rowsToWrite > 0) {
    await run("writeWeek", { today, monday, changes: [], athletes: null });
    expect(host.values("Next week").length).toBeGreaterThan(week.rowsToWrite);
    await run("takeBackWeek", { today, monday });
  }
  if (names.includes("Races")) {
    await run("writeSeason", { today });
    await run("writeSeason", { today });
  }
  if (names.includes("Squad")) await run("highlightSquad");
  await run("makeCleanTabs", { today });
  await run("makeCleanTabs", { today });
  const mendable = checked.problems.find(({ mend }) => mend !== null);
  if (mendable) {
    const { tab, tabId: of, cell, found: holds, mend } = mendable;
    await runWriting("mendCell", { today, tabId: of, cell, found: holds, mend }, `${tab}!${cell}`);
  }
  for (const { athlete } of squad.lines) {
    const { days } = host.run("diaryView", [{ today, athlete }]) as DiaryView;
    const day = days.find(({ answerTo }) => answerTo !== null);
    if (!day) continue;
    const to = day.answerTo!.replace(/ (?=\w+$)/, "!");
    await runWriting("writeDiaryAnswer", { today, athlete, day: day.day, answer: "new shoes" }, to);
    break;
  }
});

test("that was every action the sidebar may ask for", () => {
  expect([...asked].sort()).toEqual(Object.keys(requests).sort());
});

type Seen = ReturnType<typeof coaches>;

function changedCells(before: Seen, after: Seen) {
  return before.flatMap(({ name, cells }, tab) =>
    cells.flatMap((row, i) =>
      row.flatMap((was, j) => {
        const is = after[tab]?.cells[i]?.[j] ?? null;
        const at = `${name}!${String.fromCharCode(65 + j)}${i + 1}`;
        return JSON.stringify(was) === JSON.stringify(is) ? [] : [{ at, was }];
      }),
    ),
  );
}

test("the comparison itself sees one changed number format", async () => {
  const host = await opened({ Plan: [["a", 1]] });
  const before = coaches(host.workbook(), ["Plan"]);
  host.tab("Plan").getRange("B1").setNumberFormat("0.00");
  const after = coaches(host.workbook(), ["Plan"]);
  expect(changedCells(before, after).map(({ at }) => at)).toEqual(["Plan!B1"]);
  expect(accept(after)).not.toEqual(accept(before));
});
