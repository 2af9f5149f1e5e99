import { readCsvFolder } from "../../../src/local-host/files/read-csv-folder";
import type { CellData, TabData, WorkbookData } from "../../../src/local-host/workbook-data";

type Line = readonly (CellData | null)[];

const clubs = 5;
const seasons = 5;
const daysApart = 364;
/** Tabs whose rows are dated and grow with the seasons. */
const dated = new Set(["Sets", "Jumps", "Diary", "Runs"]);

/** The sample squad as sixty athletes with five seasons of rows, the newest last: so many sets. */
export function largeSquad(sampleSheets: string, setRows: number): WorkbookData {
  const read = readCsvFolder(sampleSheets, new Set(["SQUAD_TABLE", "ROW_CHECK"]));
  if (!read.ok) throw new Error(read.refusal.code);
  const { workbook } = read.value;
  const names = new Set(
    workbook.tabs
      .find(({ name }) => name === "Athletes")!
      .cells.slice(1)
      .map((line) => line[0]?.value),
  );
  const renamed = (line: Line, club: number): Line =>
    line.map((cell) =>
      club > 0 && cell && names.has(cell.value)
        ? { ...cell, value: `${String(cell.value)} ${"ABCDE"[club]}` }
        : cell,
    );
  const earlier = (line: Line, season: number): Line =>
    line.map((cell, column) =>
      column === 0 && typeof cell?.value === "number"
        ? { ...cell, value: cell.value - season * daysApart }
        : cell,
    );
  const grown = (tab: TabData): TabData => {
    const [head = [], ...rows] = tab.cells;
    if (tab.name === "Athletes") return { ...tab, cells: [head, ...allClubs(rows)] };
    if (!dated.has(tab.name)) return tab;
    const all: Line[] = [];
    for (let season = seasons - 1; season >= 0; season--) {
      all.push(...allClubs(rows).map((line) => earlier(line, season)));
    }
    return { ...tab, cells: [head, ...(tab.name === "Sets" ? all.slice(-setRows) : all)] };
  };
  const allClubs = (rows: readonly Line[]): Line[] =>
    Array.from({ length: clubs }, (_, club) => rows.map((line) => renamed(line, club))).flat();
  return { ...workbook, name: "Large squad", tabs: workbook.tabs.map(grown) };
}
