import type { TableView } from "../table-view";
import { isDate } from "../value/is-date";
import { wholeRows } from "./whole-rows";

/** Places that one day's rows are spread over: few enough to stay in the processor's nearest memory. */
const placesOfDay = 4096;
/** Places tried there before one anywhere in the table. */
const nearTries = 8;

/** Meanings whose cells mostly tell two rows apart, with the first repetition's speed. */
const telling = ["day", "athlete", "exercise", "set", "test"];

/**
 * Finds rows that repeat an earlier row cell by cell. A flat table of row numbers keyed by a hash of
 * the row's cells: one look-up a row however long the sheet, and no text built. Rows of one day lie
 * near one another in it, as they do in the sheet. The cells that tell rows apart are hashed alone; only
 * a row that has them like an earlier one is looked up by all its cells.
 */
export class DoubledRows {
  /** By place the row, from 1, in as many bits as rows need, and in the others a part of its hash; 0 where none is. */
  private readonly places: Int32Array;
  private readonly mask: number;
  private readonly rowBits: number;
  /** Columns in the order they are hashed, the day first, then the others that tell rows apart. */
  private readonly indexes: readonly number[];
  private readonly tellingCount: number;
  private readonly lastTexts: string[];
  private readonly lastHashes: number[];
  private readonly wholeRow: ReturnType<typeof wholeRows>;
  /** Rows that lean on others, by number from 0, as they are meant. */
  private readonly wholes = new Map<number, readonly unknown[]>();

  constructor(private readonly view: TableView) {
    let size = 16;
    while (size < 1.5 * (view.end - view.first)) size *= 2;
    this.places = new Int32Array(size);
    this.mask = size - 1;
    this.rowBits = 2 ** (32 - Math.clz32(view.end)) - 1;
    const { fields, repColumns } = view;
    const apart = [...telling.flatMap((field) => fields[field] ?? []), ...repColumns.slice(0, 1)];
    const others = Object.entries(fields).filter(([field]) => !telling.includes(field));
    const columns = [...apart, ...others.map(([, column]) => column), ...repColumns.slice(1)];
    this.indexes = columns.map(({ index }) => index);
    this.tellingCount = apart.length;
    this.lastTexts = this.indexes.map(() => "");
    this.lastHashes = this.indexes.map(() => 0);
    this.wholeRow = wholeRows(view);
  }

  /** The earlier row (from 0) that this one repeats, −1 when it repeats none; remembers it then. */
  earlier(line: readonly unknown[], row: number): number {
    // Under another day or name the same marks and blanks are another row.
    const whole = this.wholeRow(line, row);
    if (whole !== line) this.wholes.set(row, whole);
    return this.earlierPlain(whole, row);
  }

  /** The same of a row that leans on no other. */
  earlierPlain(line: readonly unknown[], row: number): number {
    const { tellingCount, indexes } = this;
    const dayHash = this.hashed(0x811c9dc5, line, 0, 1);
    const apart = this.hashed(dayHash, line, 1, tellingCount);
    const alike = this.heldOrKept(dayHash, apart, row, null);
    if (alike < 0 || this.same(alike, line)) return alike;
    const all = this.hashed(apart, line, tellingCount, indexes.length);
    return this.heldOrKept(dayHash, all, row, line);
  }

  /**
   * An earlier row held under such a hash, where a line is given the one that is the same cell by cell;
   * −1 where none is, and the row is held there from now on.
   */
  private heldOrKept(
    dayHash: number,
    hash: number,
    row: number,
    line: readonly unknown[] | null,
  ): number {
    const { places, mask, rowBits } = this;
    const part = hash & ~rowBits;
    let place = (dayHash & ~(placesOfDay - 1)) | (hash & (placesOfDay - 1));
    for (let tries = 1; ; tries++) {
      const held = places[place & mask]!;
      if (held === 0) {
        places[place & mask] = part | (row + 1);
        return -1;
      }
      const earlier = (held & rowBits) - 1;
      if ((held & ~rowBits) === part && (line === null || this.same(earlier, line))) return earlier;
      // A day of very many rows: steps as long as the hash says pass over what lies together.
      place =
        tries < nearTries ? place + 1 : tries === nearTries ? hash : place + ((hash >>> 7) | 1);
    }
  }

  /** A hash so far, with the cells of some columns. */
  private hashed(before: number, line: readonly unknown[], from: number, to: number): number {
    const { indexes } = this;
    let hash = before;
    for (let at = from; at < to; at++) {
      const cell = line[indexes[at] as number];
      let part = 0;
      if (typeof cell === "number") part = (cell * 8192) | 0;
      else if (typeof cell === "string") {
        // Names, lifts and kinds come in runs.
        if (cell !== this.lastTexts[at]) {
          this.lastTexts[at] = cell;
          this.lastHashes[at] = hashOfText(cell);
        }
        part = this.lastHashes[at] as number;
      } else if (isDate(cell)) part = (cell.getTime() / 60_000) | 0;
      else if (cell === true) part = 1;
      hash = Math.imul(hash ^ part, 0x9e3779b1);
      hash ^= hash >>> 15;
    }
    return hash | 0;
  }

  private same(earlier: number, line: readonly unknown[]): boolean {
    const other = this.wholes.get(earlier) ?? this.view.cells[earlier]!;
    // Columns the add-on does not know count too: a row that differs there was not typed twice.
    for (let index = Math.max(other.length, line.length) - 1; index >= 0; index--)
      if (!sameCell(other[index], line[index])) return false;
    return true;
  }
}

/** Every letter of a short text, sixteen spread over a long one; equal hashes are compared in full. */
function hashOfText(text: string): number {
  const { length } = text;
  const step = length <= 16 ? 1 : (length >> 4) + 1;
  let hash = length;
  for (let at = 0; at < length; at += step) hash = (Math.imul(hash, 31) + text.charCodeAt(at)) | 0;
  return hash;
}

function sameCell(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (isDate(a)) return isDate(b) && a.getTime() === b.getTime();
  return (a === undefined && b === "") || (b === undefined && a === "");
}
