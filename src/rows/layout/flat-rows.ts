import type { Column } from "../header/column";
import type { TableView } from "../table-view";
import type { Meanings } from "./meanings";

/** A value for the flat row, and the coach's column (from 0) it was found in; −1 for none. */
export type Placed = readonly [cell: unknown, column: number];

/** Values for a flat row, by field. */
export type PlacedFields = Readonly<Record<string, Placed | undefined>>;

/** Cells of a flat row by place, and the coach's columns they came from. */
export type Prepared = { readonly line: unknown[]; readonly columns: number[] };

/** A flat row, the coach's row (from 0) it was found in, and what its fields mean. */
type FlatRow = Prepared & { readonly row: number; readonly meanings: Meanings };

type Place = { readonly row: number; readonly column: number };

/** Rows with one cell a field, of which each remembers where in the coach's range it was found. */
export class FlatRows {
  private all: FlatRow[] = [];
  private readonly fieldAt = new Map<string, number>();

  get count(): number {
    return this.all.length;
  }

  /** Fields that several flat rows share, laid out once. */
  prepare(values: PlacedFields): Prepared {
    const prepared: Prepared = { line: [], columns: [] };
    this.lay(values, prepared);
    return prepared;
  }

  add(row: number, values: PlacedFields, shared: Prepared | undefined, meanings: Meanings): void {
    const line = shared?.line.slice() ?? [];
    const columns = shared?.columns ?? [];
    this.lay(values, { line, columns });
    this.all.push({ line, columns, row, meanings });
  }

  private lay(values: PlacedFields, { line, columns }: Prepared): void {
    for (const field in values) {
      const placed = values[field];
      if (placed === undefined) continue;
      let at = this.fieldAt.get(field);
      if (at === undefined) {
        at = this.fieldAt.size;
        this.fieldAt.set(field, at);
      }
      line[at] = placed[0];
      columns[at] = placed[1];
    }
  }

  /** Puts rows of equal meanings one after another, to be read by themselves. */
  arrange(
    chapters: readonly Meanings[],
  ): readonly Pick<TableView, "cells" | "first" | "end" | "fields" | "repColumns">[] {
    const parts = chapters.map((chapter) => this.all.filter((one) => one.meanings === chapter));
    this.all = parts.flat();
    const cells = this.all.map(({ line }) => line);
    let end = 0;
    return parts.map(({ length }, at) => {
      const first = end;
      end += length;
      return { cells, first, end, ...this.columnsOf(chapters[at]!) };
    });
  }

  private columnsOf(chapter: Meanings): Pick<TableView, "fields" | "repColumns"> {
    const fields: Record<string, Column> = {};
    // Repetitions are laid out from the first on, so their columns are in order.
    const repColumns: Column[] = [];
    for (const [field, index] of this.fieldAt) {
      const said = chapter.get(field);
      const column = { unit: null, heading: field, words: field, ...said, index };
      if (/^rep\d+$/.test(field)) repColumns.push(column);
      else fields[field] = column;
    }
    return { fields, repColumns };
  }

  /** The coach's row, from 0, of a flat row. */
  rowOf(flat: number): number {
    return this.all[flat]!.row;
  }

  placeOf(flat: number, column: number): Place {
    const { row, columns } = this.all[flat]!;
    return { row, column: columns[column] ?? -1 };
  }

  /** Where the first row, from `first` on, with something in this column has it. */
  firstPlace(first: number, column: number): Place {
    const flat = this.all.findIndex(({ columns }, at) => at >= first && columns[column]! >= 0);
    return this.placeOf(flat, column);
  }
}
