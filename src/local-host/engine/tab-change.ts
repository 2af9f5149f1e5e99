/**
 * What a mutation of the grid library changed in a tab's values: some rows, all of them, or more than
 * is known here, formulas perhaps. No tab's id means any tab.
 */
export type TabChange = {
  readonly tabId: string | null;
  readonly rows: readonly number[] | "all" | "unknown";
};

type Cells = Readonly<
  Record<number, Readonly<Record<number, { f?: unknown; si?: unknown } | null>>>
>;

/** Looks, sizes, notes, order and what a check is compared with: no cell holds another value afterwards. */
const onlyLooks =
  /^sheet\.mutation\.(?:set-(?:worksheet-(?:col-width|row-height|row-auto-height|row-is-auto-height|hidden|order)|row-data|col-data|tab-color|frozen|conditional-rule)|add-conditional-rule|delete-conditional-rule|move-conditional-rule|[a-z-]*note[a-z-]*|data-validation-formula-mark-dirty|toggle-gridlines|set-gridlines-color)$/;
const shifts = /^sheet\.mutation\.(?:insert-row|remove-rows|insert-col|remove-col)$/;

/** Null when no value of any tab is another afterwards. */
export function tabChange(id: string, params: unknown): TabChange | null {
  if (!id.startsWith("sheet.mutation.") || onlyLooks.test(id)) return null;
  const { subUnitId, cellValue } = (params ?? {}) as { subUnitId?: string; cellValue?: Cells };
  const tabId = subUnitId ?? null;
  if (shifts.test(id)) return { tabId, rows: "all" };
  if (id !== "sheet.mutation.set-range-values" || !cellValue) return { tabId, rows: "unknown" };
  const rows: number[] = [];
  for (const [row, line] of Object.entries(cellValue)) {
    rows.push(Number(row));
    for (const cell of Object.values(line ?? {})) {
      if (cell?.f || cell?.si) return { tabId, rows: "unknown" };
    }
  }
  return { tabId, rows };
}
