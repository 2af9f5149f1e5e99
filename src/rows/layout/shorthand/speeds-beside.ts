import { isDate } from "../../value/is-date";
import { holdsNothing } from "../../value/no-value";
import { type SpeedList, speedList } from "../../value/speed-list";
import type { Unfolded } from "../unfolded";

type Speeds = readonly (number | null)[];

/** Speeds in a cell beside shorthand; `isDate` where the spreadsheet made a date of them. */
export type SpeedsBeside = SpeedList & { readonly isDate: boolean };

/** No speeds, and nothing to tell of them. */
export const noSpeeds: SpeedsBeside = {
  speeds: [],
  pieces: [],
  unread: [],
  unsure: [],
  isDate: false,
};

/** The speeds a cell beside shorthand holds. */
export function speedsIn(cell: unknown): SpeedsBeside {
  if (typeof cell === "number") return { ...noSpeeds, speeds: [cell] };
  if (isDate(cell)) return { ...noSpeeds, isDate: true };
  if (holdsNothing(cell)) return noSpeeds;
  return { ...noSpeeds, ...speedList(String(cell)) };
}

/** Reports what of the speeds in a cell cannot be used: `not-a-number`, `unsure`, `date-in-number`. */
export function tellSpeeds(
  { log }: Unfolded,
  row: number,
  column: number,
  heading: string,
  { unread, unsure, isDate: dated }: SpeedsBeside,
): void {
  for (const piece of unread) log.addAtSource("not-a-number", row, column, { piece, heading });
  for (const piece of unsure) log.addAtSource("unsure", row, column, { piece, heading });
  if (dated) log.addAtSource("date-in-number", row, column, { heading });
}

/**
 * Whether shorthand's own speeds count; those beside it do where it has none. Of different ones in both
 * places neither counts: reports `speeds-twice` at the cell beside.
 */
export function ownSpeeds(
  { log }: Unfolded,
  row: number,
  own: Speeds,
  beside: { readonly speeds: Speeds; readonly column: number },
): Speeds | null {
  if (own.length === 0) return null;
  const twice = beside.speeds.some((speed) => speed !== null) && `${own}` !== `${beside.speeds}`;
  if (twice) log.addAtSource("speeds-twice", row, beside.column);
  return twice ? [] : own;
}
