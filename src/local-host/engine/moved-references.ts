import {
  type Injector,
  type IRange,
  IUniverInstanceService,
  UniverInstanceType,
  type Workbook,
} from "@univerjs/core";
import {
  deserializeRangeWithSheet,
  generateStringWithSequence,
  LexerTreeBuilder,
  sequenceNodeType,
  serializeRange,
  serializeRangeWithSheet,
} from "@univerjs/engine-formula";
import {
  type EffectRefRangeParams,
  EffectRefRangId,
  handleDefaultRangeChangeWithEffectRefCommands,
} from "@univerjs/sheets";
import type { Rectangle } from "../a1";

/** Lower than any row and further right than any column: where a range without an end reaches. */
const far = 10_000_000;

const removes: ReadonlyMap<string, "row" | "column"> = new Map([
  [EffectRefRangId.RemoveRowCommandId, "row"],
  [EffectRefRangId.RemoveColCommandId, "column"],
]);
const lineCommands: ReadonlySet<string> = new Set([
  ...removes.keys(),
  EffectRefRangId.InsertRowCommandId,
  EffectRefRangId.InsertColCommandId,
]);

/** Whether a command puts whole rows or columns in, or takes them out. */
export function movesLines({ id }: { readonly id: string }): boolean {
  return lineCommands.has(id);
}

/**
 * A formula after a command moved cells: each reference names the cells it named before, with "$" or
 * without, whichever tab is open. The library leaves references with "$" where they are.
 *
 * @param tabId the tab whose cells the formula reads where it names none
 */
export function movedReferences(
  injector: Injector,
  tabId: string,
  formula: string,
  command: EffectRefRangeParams,
): string {
  const book = injector
    .get(IUniverInstanceService)
    .getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET);
  const nodes = injector.get(LexerTreeBuilder).sequenceNodesBuilder(formula);
  if (!book || !nodes) return formula;
  const { subUnitId } = command.params as { readonly subUnitId?: string };
  const movedTab = subUnitId ?? book.getActiveSheet().getSheetId();
  const moved = nodes.map((node) => {
    if (typeof node === "string" || node.nodeType !== sequenceNodeType.REFERENCE) return node;
    const { range, sheetName } = deserializeRangeWithSheet(node.token);
    const of = sheetName === "" ? tabId : book.getSheetBySheetName(sheetName)?.getSheetId();
    if (of !== movedTab) return node;
    const now = movedRange(range, command);
    const token =
      now === null
        ? "#REF!"
        : sheetName === ""
          ? serializeRange(now)
          : serializeRangeWithSheet(sheetName, now);
    return { ...node, token };
  });
  return `=${generateStringWithSequence(moved)}`;
}

function movedRange(range: IRange, command: EffectRefRangeParams): IRange | null {
  const closed = {
    startRow: open(range.startRow) ? 0 : range.startRow,
    endRow: open(range.endRow) ? far : range.endRow,
    startColumn: open(range.startColumn) ? 0 : range.startColumn,
    endColumn: open(range.endColumn) ? far : range.endColumn,
  };
  const now = handleDefaultRangeChangeWithEffectRefCommands(closed, command);
  if (!now) return null;
  return {
    ...range,
    startRow: open(range.startRow) ? range.startRow : now.startRow,
    endRow: open(range.endRow) ? range.endRow : now.endRow,
    startColumn: open(range.startColumn) ? range.startColumn : now.startColumn,
    endColumn: open(range.endColumn) ? range.endColumn : now.endColumn,
  };
}

const open = (place: number) => !Number.isFinite(place);

/**
 * The formula of a highlight after rows or columns came or went: it is read as from the first cell of
 * its ranges, and where that one was taken out, from the first that is left.
 */
export function movedRuleFormula(
  injector: Injector,
  tabId: string,
  formula: string,
  first: Rectangle,
  command: EffectRefRangeParams,
): string {
  const along = removes.get(command.id);
  const gone = (command.params as unknown as { readonly range: Rectangle }).range;
  const [down, right] =
    along === "row"
      ? [past(first.startRow, first.endRow, gone.startRow, gone.endRow), 0]
      : along === "column"
        ? [0, past(first.startColumn, first.endColumn, gone.startColumn, gone.endColumn)]
        : [0, 0];
  const from =
    down + right > 0
      ? injector.get(LexerTreeBuilder).moveFormulaRefOffset(formula, right, down)
      : formula;
  return movedReferences(injector, tabId, from, command);
}

/** How far the first place that is left is from the first there was. */
function past(first: number, last: number, goneFrom: number, goneTo: number): number {
  return goneFrom <= first && first <= goneTo && goneTo < last ? goneTo + 1 - first : 0;
}
