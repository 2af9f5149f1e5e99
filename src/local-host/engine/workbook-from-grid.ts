import {
  BooleanNumber,
  CellValueType,
  type ICellData,
  type IStyleData,
  WrapStrategy,
} from "@univerjs/core";
import { rangeName } from "../a1";
import type { Spreadsheet } from "../services/spreadsheet";
import type { CellData, CellStyle, TabData, WorkbookData } from "../workbook-data";
import type { GridEngine } from "./grid-engine";
import { alignments } from "./snapshot";

/** The grid's workbook as plain data; cells filled by a formula elsewhere are left to that formula. */
export function workbookFrom(
  engine: GridEngine,
  spreadsheet: Spreadsheet,
  properties: Readonly<Record<string, string>>,
): WorkbookData {
  const { book } = engine;
  return {
    name: book.getName(),
    tabs: spreadsheet.getSheets().map((sheet) => {
      const { inside } = sheet;
      const { grid } = inside;
      const { rows, columns } = inside.extent();
      const cells: (CellData | null)[][] = [];
      for (let row = 0; row < rows; row++) {
        const line: (CellData | null)[] = [];
        for (let column = 0; column < columns; column++) {
          const own = inside.ownCell(row, column);
          const note = inside.note(row, column);
          line.push(own || note !== "" ? cellData(own ?? {}, note, inside.styleOf(own)) : null);
        }
        cells.push(line);
      }
      return {
        name: grid.getSheetName(),
        cells,
        frozenRows: Math.max(0, grid.getFrozenRows()),
        frozenColumns: Math.max(0, grid.getFrozenColumns()),
        columnWidths: Array.from({ length: columns }, (_, column) => grid.getColumnWidth(column)),
        conditionalFormats: inside.extras.rules,
        validations: inside.extras.validations.map(({ at, rule }) => ({
          range: rangeName(at),
          values: rule.values,
        })),
      } satisfies TabData;
    }),
    names: book
      .getDefinedNames()
      .map((name) => ({ name: name.getName(), ref: name.getFormulaOrRefString() })),
    properties,
  };
}

function cellData(cell: ICellData, note: string, look: IStyleData): CellData {
  const value = cell.v === undefined || cell.v === null || cell.v === "" ? null : cell.v;
  const style: CellStyle = {
    ...(look.bl === BooleanNumber.TRUE && { bold: true }),
    ...(look.it === BooleanNumber.TRUE && { italic: true }),
    ...(look.cl?.rgb && { colour: look.cl.rgb }),
    ...(look.bg?.rgb && { background: look.bg.rgb }),
    ...(look.tb === WrapStrategy.WRAP && { wrap: true }),
    ...alignment(look.ht),
  };
  return {
    value:
      value !== null && cell.t === CellValueType.BOOLEAN
        ? value === 1 || value === true || value === "1"
        : value,
    ...(cell.f && { formula: cell.f }),
    ...(look.n?.pattern && { format: look.n.pattern }),
    ...(note !== "" && { note }),
    ...(Object.keys(style).length > 0 && { style }),
  };
}

function alignment(value: unknown): Pick<CellStyle, "align"> {
  const found = Object.entries(alignments).find(([, one]) => one === value);
  return found ? { align: found[0] as keyof typeof alignments } : {};
}
