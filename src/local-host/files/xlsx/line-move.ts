/** Where the rows, or the columns, of a tab went. */
export type LineMove = {
  /** By old place from 0: the new place, null for a line that is gone. */
  readonly to: readonly (number | null)[];
  /** By how much all lines beyond those went on. */
  readonly beyond: number;
};

/**
 * Finds the lines that were put in and taken out between two states of a tab, from what stands in
 * them: lines that are there before and after, just once and in one order, tell where the others
 * went. A line that was only emptied or changed stays where it is.
 *
 * @param before what stands in each line, as one text; "" for an empty one
 * @returns null when every line stands where it stood
 */
export function lineMove(before: readonly string[], after: readonly string[]): LineMove | null {
  const [old, now] = [before.slice(), after.slice()];
  const top = equalFrom("top", old, now, 0, old.length, 0, now.length);
  let bottom = equalFrom("end", old, now, top, old.length, top, now.length);
  if (old.slice(old.length - bottom).every((line) => line === "")) {
    // Emptied at the end is not taken out: both go on for ever with empty lines.
    bottom = 0;
    while (old.length < now.length) old.push("");
    while (now.length < old.length) now.push("");
  }
  const to: (number | null)[] = Array.from({ length: old.length }, () => null);
  for (let at = 0; at < top; at++) to[at] = at;
  for (let at = 1; at <= bottom; at++) to[old.length - at] = now.length - at;
  fill(to, old, now, [top, old.length - bottom, top, now.length - bottom]);
  const last = to.findLastIndex((place) => place !== null);
  const beyond = last < 0 ? 0 : to[last]! - last;
  return to.every((place, at) => place === at) && beyond === 0 ? null : { to, beyond };
}

type Stretch = readonly [oldFrom: number, oldEnd: number, newFrom: number, newEnd: number];

function fill(
  to: (number | null)[],
  old: readonly string[],
  now: readonly string[],
  [oldFrom, oldEnd, newFrom, newEnd]: Stretch,
): void {
  let [at, place] = [oldFrom, newFrom];
  const pair = (oldTo: number, newTo: number) => {
    const same = equalFrom("top", old, now, at, oldTo, place, newTo);
    for (let step = 0; step < same; step++) to[at + step] = place + step;
    [at, place] = [at + same, place + same];
    const alike = equalFrom("end", old, now, at, oldTo, place, newTo);
    for (let step = 1; step <= alike; step++) to[oldTo - step] = newTo - step;
    // Changed lines: the first of those left on either side.
    const changed = Math.min(oldTo - at, newTo - place) - alike;
    for (let step = 0; step < changed; step++) to[at + step] = place + step;
  };
  for (const [oldAt, newAt] of anchors(old, now, [oldFrom, oldEnd, newFrom, newEnd])) {
    pair(oldAt, newAt);
    to[oldAt] = newAt;
    [at, place] = [oldAt + 1, newAt + 1];
  }
  pair(oldEnd, newEnd);
}

/** Lines that stand once before and once after, the most of them that are in one order. */
function anchors(
  old: readonly string[],
  now: readonly string[],
  [oldFrom, oldEnd, newFrom, newEnd]: Stretch,
): readonly (readonly [number, number])[] {
  const oldAt = once(old, oldFrom, oldEnd);
  const newAt = once(now, newFrom, newEnd);
  const pairs: [number, number][] = [];
  for (const [line, at] of oldAt) {
    const place = newAt.get(line);
    if (at >= 0 && place !== undefined && place >= 0 && line !== "") pairs.push([at, place]);
  }
  return longestRising(pairs);
}

/** Places of the lines of a stretch; −1 for those that stand there more than once. */
function once(lines: readonly string[], from: number, end: number): ReadonlyMap<string, number> {
  const places = new Map<string, number>();
  for (let at = from; at < end; at++) places.set(lines[at]!, places.has(lines[at]!) ? -1 : at);
  return places;
}

/** The longest run of pairs, ordered by their first number, whose second numbers rise (patience sorting). */
function longestRising(pairs: readonly [number, number][]): readonly [number, number][] {
  const ends: number[] = [];
  const before: number[] = [];
  pairs.forEach(([, place], at) => {
    let [low, high] = [0, ends.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (pairs[ends[middle]!]![1] < place) low = middle + 1;
      else high = middle;
    }
    before[at] = low > 0 ? ends[low - 1]! : -1;
    ends[low] = at;
  });
  const run: [number, number][] = [];
  for (let at = ends.at(-1) ?? -1; at >= 0; at = before[at]!) run.push(pairs[at]!);
  return run.reverse();
}

/** How many lines of a stretch are equal one after another, counted from its top or from its end. */
function equalFrom(
  side: "top" | "end",
  old: readonly string[],
  now: readonly string[],
  ...[oldFrom, oldEnd, newFrom, newEnd]: Stretch
): number {
  const most = Math.min(oldEnd - oldFrom, newEnd - newFrom);
  const place = (from: number, end: number, count: number) =>
    side === "top" ? from + count : end - 1 - count;
  let count = 0;
  while (count < most && old[place(oldFrom, oldEnd, count)] === now[place(newFrom, newEnd, count)])
    count++;
  return count;
}

/** The new place of a line; null when it is gone. */
export function placeOf(move: LineMove | null, at: number): number | null {
  if (move === null) return at;
  return at < move.to.length ? move.to[at]! : at + move.beyond;
}

/** The first line from a place on that is not gone, by its old place; null when none is left. */
export function firstLeft(move: LineMove | null, at: number, most: number): number | null {
  let place = at;
  while (place < most && placeOf(move, place) === null) place++;
  return place < most ? place : null;
}

/** The new ends of a stretch of lines, both included; null when all of it is gone. */
export function stretchOf(
  move: LineMove | null,
  from: number,
  end: number,
  most: number,
): readonly [number, number] | null {
  if (move === null) return [from, end];
  let last = Math.min(end, most - 1);
  const first = firstLeft(move, from, last + 1);
  if (first === null) return null;
  while (last > first && placeOf(move, last) === null) last--;
  const ends = [placeOf(move, first)!, end >= most - 1 ? end : placeOf(move, last)!] as const;
  return ends[0] < most ? [ends[0], Math.min(ends[1], most - 1)] : null;
}
