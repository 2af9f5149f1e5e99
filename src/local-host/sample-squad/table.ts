/** One cell of the sample: text, a number, or null for a blank one. */
export type SampleCell = string | number | null;

/** A table of the sample workbook, its heading row first; each becomes a tab of this name. */
export type SampleTable = {
  readonly name: string;
  readonly rows: readonly (readonly SampleCell[])[];
};

/** A row that stands on a day; tables are kept in order of day. */
export type Dated = { readonly day: number; readonly row: readonly SampleCell[] };

export function inOrderOfDay(rows: readonly Dated[]): readonly (readonly SampleCell[])[] {
  return rows
    .map((dated, place) => ({ ...dated, place }))
    .sort((a, b) => a.day - b.day || a.place - b.place)
    .map(({ row }) => row);
}
