import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { RowCheckView, SetUpView } from "../../src/actions/messages";
import { requests } from "../../src/actions/requests";
import { readCsvFolder } from "../../src/local-host/files/read-csv-folder";
import type { CellData, TabData, WorkbookData } from "../../src/local-host/workbook-data";
import { local } from "../local-host/built";

// Two whole workbooks are read and written again and again.

const root = join(__dirname, "../..");
const today = "2026-06-28";
const monday = "2026-06-29";
const changes: unknown[] = [];
const ofToday = { today };

/** Said of an action whose cells to write lie apart in their tab. */
const apart = "apart";

type Line = readonly (CellData | null)[];

/** Every athlete three times over, under names of their own, with all their rows. */
function threeClubs(workbook: WorkbookData): WorkbookData {
  const names = new Set(
    (workbook.tabs.find(({ name }) => name === "Athletes")?.cells ?? [])
      .slice(1)
      .map((line) => line[0]?.value),
  );
  const renamed = (line: Line, letter: string): Line =>
    line.map((cell) =>
      cell && names.has(cell.value) ? { ...cell, value: `${String(cell.value)} ${letter}` } : cell,
    );
  const grown = (tab: TabData): TabData => {
    const [head = [], ...rows] = tab.cells;
    const own = rows.filter((line) => line.some((cell) => cell && names.has(cell.value)));
    const more = ["B", "C"].flatMap((letter) => own.map((line) => renamed(line, letter)));
    return { ...tab, cells: [head, ...rows, ...more] };
  };
  return { ...workbook, tabs: workbook.tabs.map(grown) };
}

/** Calls each action makes to the platform's services, one after another in one workbook. */
async function callsOf(grow: (workbook: WorkbookData) => WorkbookData) {
  const read = readCsvFolder(join(root, "sample-sheets"), new Set());
  if (!read.ok) throw new Error(read.refusal.code);
  const host = await local.openHost({
    workbook: grow(read.value.workbook),
    bundleSource: readFileSync(join(root, "dist/code.js"), "utf8"),
    files: {},
  });
  const tabId = (name: string) => host.tab(name).getSheetId();
  const athlete = "Tomas Reyerson";
  const sets = { ...ofToday, tabId: tabId("Sets") };
  const tab = { ...sets, about: "speeds", written: "" };
  const { problems } = host.run("rowCheck", [ofToday]) as RowCheckView;
  const { tabId: of, cell, found, mend } = problems.find((one) => one.mend !== null)!;
  const headings = host.tab("Sets").getDataRange().getValues()[0]!.map(String);
  const column = headings.findIndex((one) => /load/i.test(one)) + 1;
  const heading = headings[column - 1]!;
  /** A change for every other athlete, so that the lines to write lie apart. */
  const everyOther = () => {
    const [, ...rows] = host.tab("Athletes").getDataRange().getValues();
    return rows.filter((_, i) => i % 2 === 0).map(([name]) => ({ athlete: name, sets: 2 }));
  };
  const tagged = () => {
    const { answered } = host.run("setUpView", [ofToday]) as SetUpView;
    return answered.find((one) => "column" in one)!;
  };
  type Asked = readonly [keyof typeof requests, object | (() => object), typeof apart?];
  const asked: readonly Asked[] = [
    ["squadView", ofToday],
    ["athleteView", { ...ofToday, athlete }],
    ["diaryView", { ...ofToday, athlete }],
    ["rowCheck", ofToday],
    ["setUpView", ofToday],
    ["weekView", { ...ofToday, monday: null, changes }],
    ["printPages", { ...ofToday, kind: "cards", monday: null, changes }],
    ["printPages", { ...ofToday, kind: "rack plan", monday: null, changes }],
    ["printPages", { ...ofToday, kind: "week page", monday: null, changes }],
    ["writeWeek", { ...ofToday, monday, changes, athletes: null }],
    ["weekView", { ...ofToday, monday, changes }],
    ["writeWeek", { ...ofToday, monday, changes, athletes: null }],
    ["writeWeek", () => ({ ...ofToday, monday, changes: everyOther(), athletes: null }), apart],
    ["takeBackWeek", { ...ofToday, monday }],
    ["writeSeason", ofToday],
    ["writeSeason", ofToday],
    [
      "writeSeason",
      () => {
        // A race of one group, whose athletes stand anywhere, is put a week later.
        host.tab("Races").getRange(2, 1).setValue("2026-05-03");
        return ofToday;
      },
      apart,
    ],
    ["highlightSquad", {}],
    ["goToCell", { tabId: tabId("Sets"), cell: "B2" }],
    ["mendCell", { ...ofToday, tabId: tabId("Sets"), cell: "B2", found: "x", mend: "y" }],
    ["answerName", { ...ofToday, written: "T. R.", athlete, same: true }],
    ["forgetName", { ...ofToday, written: "T. R." }],
    ["answerSet", { ...ofToday, set: "x" }],
    ["forgetSet", { ...ofToday, set: "x" }],
    ["answerTable", { ...ofToday, tabId: tabId("Sets"), table: "Sets" }],
    ["forgetTable", { ...ofToday, tabId: tabId("Sets") }],
    ["writeDiaryAnswer", { ...ofToday, athlete, day: "2026-06-23", answer: "late train" }],
    ["makeCleanTabs", ofToday],
    ["printPages", { ...ofToday, kind: "pictures", monday: null, changes }],
    ["answerTab", { ...tab, answer: "one for each set" }],
    ["forgetTab", tab],
    ["answerColumn", { ...sets, heading, column, field: null }],
    [
      "forgetColumn",
      () => {
        const { column: at, tag, about } = tagged() as never;
        return { ...sets, column: at, tag, about };
      },
    ],
    ["mendCell", { ...ofToday, tabId: of, cell, found, mend }],
    ["forgetDamaged", { what: "answers" }],
  ];
  const counted = asked.map(([name, given, lie], at) => {
    const message = typeof given === "function" ? given() : given;
    host.calls.reset();
    let refused = "";
    try {
      host.run(name, [message]);
    } catch (failure) {
      refused = (failure as Error).message;
    }
    const action = `${at + 1} ${name}`;
    return { action, refused, lie, counts: Object.fromEntries(host.calls.counts) };
  });
  const { length: athletes } = host.tab("Athletes").getDataRange().getValues();
  host.dispose();
  return { counted, athletes };
}

let small: Awaited<ReturnType<typeof callsOf>>;
let large: typeof small;
beforeAll(async () => {
  small = await callsOf((workbook) => workbook);
  large = await callsOf(threeClubs);
});

test("every request the sidebar can make is counted, and only a mend of what is not there is refused", () => {
  const { counted } = small;
  const names = new Set(counted.map(({ action }) => action.split(" ")[1]));
  expect([...names].sort()).toEqual(Object.keys(requests).sort());
  expect(counted.filter(({ refused }) => refused !== "").map(({ action }) => action)).toEqual([
    "20 mendCell",
  ]);
});

test("no action calls the platform more often for three times the athletes and rows", () => {
  expect(large.athletes).toBeGreaterThan(2.5 * small.athletes);
  const always = ({ counted }: typeof small) => counted.filter(({ lie }) => lie !== apart);
  expect(always(large)).toEqual(always(small));
  for (const { counts } of small.counted) {
    // Each of the eleven tabs once, and the week's own again before and after it is written.
    expect(counts["Range.getValues"] ?? 0).toBeLessThanOrEqual(11 + 5);
  }
});

test("cells that lie apart take a few writes, however many athletes they are of", () => {
  const writes = large.counted.filter(({ lie }) => lie === apart).map(({ counts }) => counts);
  expect(writes).toHaveLength(2);
  for (const { "Range.setValues": times = 0 } of writes) {
    expect(times).toBeGreaterThan(0);
    // Eight at most, and the tab's title.
    expect(times).toBeLessThanOrEqual(8 + 1);
  }
});
