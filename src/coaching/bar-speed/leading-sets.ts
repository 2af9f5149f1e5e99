import type { LineFit, LineRow } from "./line-fit";
import type { LineSettings } from "./line-settings";

/** How a kind of leading set (marker, first work set) lies around lines drawn through all sets. */
export type LeadingSets = {
  /** Mean distance from the line, m/s: first sets are a little faster than the later ones. */
  readonly offset: number;
  /** SD of one such set around line and offset, m/s. */
  readonly sd: number;
  /** Degrees of freedom the SD is worth for one athlete. */
  readonly freedom: number;
};

/** Degrees of freedom that a squad's SD is worth for one athlete; 9 suits a spread of 25 %. */
export const squadWorth = 9;

/** Sets that "no offset" and the assumed SD are worth. */
const worth = 10;

/**
 * Pools the squad's leading sets of one kind: their mean distance from each athlete's line, and their
 * SD within athletes, both steadied by none and by the day and set SDs together.
 */
export function leadingSets(
  squad: readonly { readonly rows: readonly LineRow[]; readonly line: LineFit | null }[],
  kind: "marker" | "work",
  { daySd, setSd }: LineSettings,
): LeadingSets {
  let sum = 0;
  let sets = worth;
  let squares = worth * (daySd ** 2 + setSd ** 2);
  let freedom = worth;
  for (const { rows, line } of squad) {
    if (!line) continue;
    const offs = leadingOffs(rows, line, kind);
    if (offs.length === 0) continue;
    const total = offs.reduce((all, off) => all + off, 0);
    sum += total;
    sets += offs.length;
    for (const off of offs) squares += (off - total / offs.length) ** 2;
    freedom += offs.length - 1;
  }
  return { offset: sum / sets, sd: Math.sqrt(squares / freedom), freedom: squadWorth };
}

/** Distances of an athlete's leading sets of one kind from a line, m/s. */
export function leadingOffs(
  rows: readonly LineRow[],
  line: LineFit,
  kind: "marker" | "work",
): readonly number[] {
  const offs: number[] = [];
  for (let at = 0; at < rows.length; at++) {
    const { leads, loadKg, speed } = rows[at]!;
    if (leads === kind) offs.push(speed - line.intercept - line.slope * loadKg);
  }
  return offs;
}
