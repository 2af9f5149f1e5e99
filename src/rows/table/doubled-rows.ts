import type { TableView } from "../table-view";
import { isDate } from "../value/is-date";

/**
 * Finds rows that repeat an earlier row cell by cell. A flat table of row numbers keyed by a hash of
 * the row's own figures: one look-up a row however long the sheet, and no text built.
 */
export class DoubledRows {
  private readonly slots: Int32Array;
  private readonly hashes: Int32Array;
  private readonly mask: number;
  private readonly indexes: readonly number[];
  private readonly names = new Map<string, number>();
  private lastName = "";
  private lastId = 0;

  constructor(private readonly view: TableView) {
    let size = 16;
    while (size < 2 * (view.end - view.first)) size *= 2;
    this.slots = new Int32Array(size);
    this.hashes = new Int32Array(size);
    this.mask = size - 1;
    this.indexes = [
      ...Object.values(view.fields).map((column) => column.index),
      ...view.repColumns.map((column) => column.index),
    ];
  }

  /** The earlier row (from 0) that this one repeats, −1 when it repeats none; remembers it then. */
  earlier(row: number, name: string, day: number, figure: number, other = 0): number {
    let hash = Math.imul(this.idOf(name) ^ Math.imul(day, 0x9e3779b1), 0x85ebca6b);
    hash = Math.imul(hash ^ Math.round(figure * 1000), 0xc2b2ae35) ^ Math.round(other * 1000);
    hash = Math.imul(hash ^ (hash >>> 15), 0x27d4eb2f) | 0;
    let slot = hash & this.mask;
    for (; ; slot = (slot + 1) & this.mask) {
      const held = this.slots[slot] as number;
      if (held === 0) {
        this.slots[slot] = row + 1;
        this.hashes[slot] = hash;
        return -1;
      }
      if (this.hashes[slot] === hash && this.same(held - 1, row)) return held - 1;
    }
  }

  private idOf(name: string): number {
    if (name === this.lastName) return this.lastId;
    let id = this.names.get(name);
    if (id === undefined) {
      id = this.names.size + 1;
      this.names.set(name, id);
    }
    this.lastName = name;
    this.lastId = id;
    return id;
  }

  private same(one: number, other: number): boolean {
    const a = this.view.cells[one] ?? [];
    const b = this.view.cells[other] ?? [];
    return this.indexes.every((index) => sameCell(a[index], b[index]));
  }
}

function sameCell(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (isDate(a)) return isDate(b) && a.getTime() === b.getTime();
  return (a === undefined && b === "") || (b === undefined && a === "");
}
