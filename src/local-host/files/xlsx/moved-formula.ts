import { columnLetters, columnNumber } from "../../a1";
import { largestTab } from "./largest-tab";
import { type LineMove, stretchOf } from "./line-move";

/** What became of a tab: its name, and where its rows and columns went. */
export type TabMove = {
  readonly name: string;
  readonly rows: LineMove | null;
  readonly columns: LineMove | null;
};

/** By the tab's old name. */
export type TabMoves = ReadonlyMap<string, TabMove>;

const ends =
  /^(\$?)([A-Z]{1,3})(\$?)(\d{1,7})(?::(\$?)([A-Z]{1,3})(\$?)(\d{1,7}))?$|^(\$?)([A-Z]{1,3}):(\$?)([A-Z]{1,3})$|^(\$?)(\d{1,7}):(\$?)(\d{1,7})$/;

/** A range as files write it, "B2", "$A$1:C9", "A:C", "2:3", after its tab's lines went elsewhere; null when it is gone. */
export function movedRange(range: string, { rows, columns }: Omit<TabMove, "name">): string | null {
  const found = ends.exec(range);
  if (!found) return range;
  const [, a, left, b, top, c, right, d, bottom, e, from, f, to, g, first, h, last] = found;
  const along = (one: string, other: string) => {
    const at = stretchOf(columns, columnNumber(one), columnNumber(other), largestTab.columns);
    return at && ([columnLetters(at[0]), columnLetters(at[1])] as const);
  };
  const down = (one: string, other: string) => {
    const at = stretchOf(rows, Number(one) - 1, Number(other) - 1, largestTab.rows);
    return at && ([at[0] + 1, at[1] + 1] as const);
  };
  if (from !== undefined) {
    const at = along(from, to!);
    return at && `${e}${at[0]}:${f}${at[1]}`;
  }
  if (first !== undefined) {
    const at = down(first, last!);
    return at && `${g}${at[0]}:${h}${at[1]}`;
  }
  const [across, height] = [along(left!, right ?? left!), down(top!, bottom ?? top!)];
  if (!across || !height) return null;
  const start = `${a}${across[0]}${b}${height[0]}`;
  return right === undefined ? start : `${start}:${c}${across[1]}${d}${height[1]}`;
}

const parts =
  /"(?:[^"]|"")*"|\[[^[\]]*\]|(?:('(?:[^']|'')*'|[\p{L}_][\p{L}\d_.]*)!)?(?<![\p{L}\d_.$:])(\$?[A-Z]{1,3}\$?\d{1,7}(?::\$?[A-Z]{1,3}\$?\d{1,7})?|\$?[A-Z]{1,3}:\$?[A-Z]{1,3}|\$?\d{1,7}:\$?\d{1,7})(?![\p{L}\d_.(!$:])/gu;

/**
 * A formula of a check, a highlight or a name after tabs were renamed and their lines went elsewhere.
 *
 * @param home old name of the tab the formula stands in
 */
export function movedFormula(formula: string, home: string, moves: TabMoves): string {
  return formula.replace(parts, (all, tab: string | undefined, range: string | undefined) => {
    if (range === undefined) return all;
    const of = tab?.startsWith("'") ? tab.slice(1, -1).replaceAll("''", "'") : tab;
    const move = moves.get(of ?? home);
    if (!move) return all;
    const moved = movedRange(range, move) ?? "#REF!";
    if (tab === undefined) return moved;
    return `${move.name === of ? tab : `'${move.name.replaceAll("'", "''")}'`}!${moved}`;
  });
}
