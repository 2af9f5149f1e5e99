import { serveRequest } from "../../src/actions/requests";
import { openServices, type ServicesHost } from "../faults/held-by-services";
import { monday, smallClub, today } from "../faults/small-club";
import { memoryWorkbook } from "./memory-workbook";

// What a tab of ours was to look like, as the workbook in memory was told, is what the platform shows.
const asked = [
  ["makeCleanTabs", { today }],
  ["writeWeek", { today, monday, changes: [], athletes: null }],
  ["writeSeason", { today }],
] as const;
const memory = memoryWorkbook(smallClub());
type Dressed = { readonly headingRow: number; readonly widths: readonly number[] };
type Told = {
  readonly dressed: [string, Dressed][];
  readonly inView: [number, number][];
  readonly offers: [string, string[]][];
  readonly formats: [string, string][];
  readonly aligned: string[];
  readonly warned: [string, string][];
  readonly painted: [string, string][];
};
let told: Told;
let host: ServicesHost;
beforeAll(async () => {
  host = await openServices();
  // Twice: what stands there already is not put there again.
  for (const [name, message] of [...asked, ...asked]) {
    serveRequest(memory, name, message);
    host.run(name, [message]);
  }
  told = memory.all() as Told;
});
afterAll(() => host.dispose());

/** A place as the workbook in memory keeps it, tab by number or by name: "Sets", "A2:A". */
function place(key: string): [tab: string, range: string] {
  const [tab = "", ...range] = key.split("!");
  const found = memory.tabs().find(({ id }) => String(id) === tab);
  return [found?.name ?? tab, range.join("!")];
}
/** What was told of each tab, by its range; a range to the end of the tab, as the platform says it. */
const toldByTab = <Part>(list: readonly [string, Part][]) =>
  list.map(([key, part]): [string, string, Part] => {
    const [tab, range] = place(key);
    return [tab, range.replace(/:[A-Z]+$/, (end) => `${end}${host.tab(tab).getMaxRows()}`), part];
  });
const sorted = (list: readonly unknown[]) => list.map((one) => JSON.stringify(one)).sort();

test("headings are bold and stay in view, columns are as wide, and the coach's tabs are left alone", () => {
  const dressed = new Map(told.dressed.map(([key, dress]) => [place(key)[0], dress]));
  expect(dressed.size).toBe(7);
  for (const { name, frozenRows, columnWidths, cells } of host.workbook().tabs) {
    const dress = dressed.get(name);
    expect([name, frozenRows]).toEqual([name, dress?.headingRow ?? 0]);
    if (!dress) expect([name, columnWidths]).toEqual([name, []]);
    const bold = cells.flatMap((row, i) => (row.some((cell) => cell?.style?.bold) ? [i + 1] : []));
    expect([name, bold]).toEqual([name, dress ? [dress.headingRow] : []]);
  }
  for (const [key, { widths }] of told.dressed) {
    const [name, from] = place(key);
    const grid = host.engine.book.getSheetByName(name)!;
    const shown = widths.map((_, at) => grid.getColumnWidth(Number(from) - 1 + at));
    expect([name, shown]).toEqual([name, widths]);
  }
});

test("names stay in view beside what is scrolled to, in the two tabs read along a row", () => {
  const frozen = host
    .workbook()
    .tabs.flatMap(({ name, frozenColumns }) => (frozenColumns > 0 ? [[name, frozenColumns]] : []));
  expect(sorted(frozen)).toEqual(
    sorted(told.inView.map(([id, columns]) => [place(String(id))[0], columns])),
  );
  expect(frozen.map(([name]) => name).sort()).toEqual(["Next week", "Season"]);
});

test("athlete, marker, typed speed and its answer are seen together on a phone", () => {
  const dressed = new Map(told.dressed.map(([key, dress]) => [place(key)[0], dress]));
  const first = dressed.get("Next week")!.widths.slice(0, 4);
  // A common phone is 375 px wide; the row numbers take 46 of them.
  expect(first.reduce((sum, width) => sum + width, 46)).toBeLessThanOrEqual(375);
});

test("drop-downs stand where they were to, each once, and take other values too", () => {
  const lists = host.workbook().tabs.flatMap(({ name, validations }) =>
    validations.map(({ range, values, refusesOthers }) => {
      expect(refusesOthers).toBe(false);
      return [name, range, values];
    }),
  );
  expect(lists.length).toBeGreaterThan(5);
  expect(sorted(lists)).toEqual(sorted(toldByTab(told.offers)));
});

test("headings warn before they are edited, each tab once, and nobody is shut out", () => {
  const warnings = host.workbook().tabs.flatMap(({ name }) =>
    host
      .tab(name)
      .getProtections("RANGE")
      .map((one) => {
        expect(one.isWarningOnly()).toBe(true);
        return [name, one.getRange().getA1Notation(), one.getDescription()];
      }),
  );
  expect(warnings.length).toBeGreaterThan(3);
  expect(sorted(warnings)).toEqual(sorted(toldByTab(told.warned)));
});

test("days, numbers and texts are shown as they were to be, down to the end of the tab", () => {
  const formats = toldByTab(told.formats);
  expect(formats.length).toBeGreaterThan(15);
  for (const [tab, range, pattern] of formats) {
    const shown = new Set(host.tab(tab).getRange(range).getNumberFormats().flat());
    expect([tab, range, [...shown]]).toEqual([tab, range, [pattern]]);
  }
});

test("days stand to the left under their heading, as words do; numbers are left to the right", () => {
  const { aligned, formats } = told;
  const days = toldByTab(formats.filter(([key]) => aligned.includes(key)));
  expect(days).toHaveLength(aligned.length);
  expect(days.map(([tab]) => tab)).toEqual(
    expect.arrayContaining(["Next week", "Jumps", "Season"]),
  );
  // What was put to the left are the days, all of them and nothing else.
  expect(sorted(days)).toEqual(
    sorted(toldByTab(formats.filter(([, one]) => /[ym]/.test(one) && /d/.test(one)))),
  );
  const left = host
    .workbook()
    .tabs.flatMap(({ name, cells }) =>
      cells.flatMap((row) =>
        row.flatMap((cell) => (cell?.style?.align === "left" ? [[name, cell.format]] : [])),
      ),
    );
  const meant = new Set(days.map(([tab, , pattern]) => `${tab} ${pattern}`));
  expect(new Set(left.map((one) => one.join(" ")))).toEqual(meant);
});

test("the one column a coach types into has its ground, and no other cell has one", () => {
  expect(told.painted).toHaveLength(1);
  const [[tab, range, colour] = ["", "", ""]] = toldByTab(told.painted);
  const [column, fromRow] = range.split("!").map(Number) as [number, number];
  const sheet = host.tab(tab);
  const grounds = sheet.getRange(1, 1, sheet.getMaxRows(), sheet.getMaxColumns()).getBackgrounds();
  const other = grounds.flatMap((row, i) =>
    row.flatMap((ground, j) => {
      const meant = j + 1 === column && i + 1 >= fromRow ? colour : "#ffffff";
      return ground === meant ? [] : [`${i + 1},${j + 1}: ${ground}`];
    }),
  );
  expect(other).toEqual([]);
});
