import type { CellData } from "../../../src/local-host/workbook-data";
import { baselineSessions, type FigureName, recentSessions } from "./figures";
import { place, reps, type SetRows } from "./set-rows";

type Tab = { readonly name: string; readonly cells: readonly (readonly CellData[])[] };

/** Tabs of formulas beside the tab of sets, and where their answers stand. */
export type Asked = {
  readonly tabs: readonly Tab[];
  readonly answer: { readonly tab: string; readonly from: number; readonly column: number };
};

const letter = (index: number) => String.fromCharCode(65 + index);
const formula = (text: string): CellData => ({ value: null, formula: `=${text}` });

/** One figure as a coach without the add-on would write it: by row, then by athlete. */
export function builtInFormulas({ cells, athletes }: SetRows, figure: FigureName): Asked {
  const end = cells.length;
  const column = (index: number) => `Sets!${letter(index)}$2:${letter(index)}$${end}`;
  const speeds = (row: number) =>
    `Sets!${letter(place.rep)}${row}:${letter(place.rep + reps - 1)}${row}`;
  const byRow = (of: (row: number) => readonly CellData[]): Tab => ({
    name: "Rows",
    cells: [[], ...Array.from({ length: end - 1 }, (_, at) => of(at + 2))],
  });
  const byAthlete = (of: (row: number) => readonly CellData[]): Tab => ({
    name: "Each",
    cells: athletes.map((name, at) => [{ value: name }, ...of(at + 1)]),
  });
  const fastestBy = byRow((row) => [formula(`MAX(${speeds(row)})`)]);
  const fastest = `Rows!A$2:A$${end}`;
  const athlete = column(place.athlete);
  if (figure === "loss") {
    const last = (row: number) => `INDEX(${speeds(row)},1,COUNT(${speeds(row)}))`;
    return {
      tabs: [
        byRow((row) => [formula(`MAX(${speeds(row)})`), formula(`(A${row}-${last(row)})/A${row}`)]),
      ],
      answer: { tab: "Rows", from: 1, column: 1 },
    };
  }
  if (figure === "setToSet") {
    const day = column(place.day);
    const set = column(place.set);
    const sum = (row: number, which: string) =>
      Array.from(
        { length: reps },
        (_, rep) =>
          `SUMIFS(${column(place.rep + rep)},${athlete},A${row},${day},B${row},${set},${which})`,
      ).join("+");
    return {
      tabs: [
        byAthlete((row) => [
          formula(`MAXIFS(${day},${athlete},A${row})`),
          formula(`MAXIFS(${set},${athlete},A${row},${day},B${row})`),
          formula(`(${sum(row, `C${row}`)})/(${sum(row, "1")})-1`),
        ]),
      ],
      answer: { tab: "Each", from: 0, column: 3 },
    };
  }
  const own = (row: number) => `${athlete}=A${row}`;
  const markers = (row: number) =>
    `FILTER(${fastest},(${own(row)})*(${column(place.kind)}="marker"))`;
  const answer =
    figure === "line"
      ? (row: number) =>
          `SLOPE(FILTER(${fastest},${own(row)}),FILTER(${column(place.load)},${own(row)}))`
      : (row: number) =>
          `AVERAGE(TAKE(${markers(row)},-${recentSessions}))/AVERAGE(TAKE(${markers(row)},${baselineSessions}))-1`;
  return {
    tabs: [fastestBy, byAthlete((row) => [formula(answer(row))])],
    answer: { tab: "Each", from: 0, column: 1 },
  };
}
