/** A race as it is named above its line; `row` 0 is the lower one, null where there is no room. */
export type RaceLabel = {
  readonly text: string;
  /** Middle of the text, pixels. */
  readonly middle: number;
  readonly row: 0 | 1 | null;
};

/** Pixels of a letter at the size of the labels, a generous one; and between two labels. */
const letter = 6.6;
const apart = 4;

/** "R4", "County", "St. Albans": the first words of a name that say something by themselves. */
export function shortRace(name: string): string {
  const words = (name.split(",")[0] ?? "").trim().split(/\s+/);
  const enough = words.findIndex((_, at) => {
    const text = words.slice(0, at + 1).join(" ");
    return /\d/.test(text) || text.length > 3;
  });
  return words.slice(0, enough < 0 ? words.length : enough + 1).join(" ");
}

/**
 * Where each race is named: over its line, inside the drawing, in the second row where the first is
 * taken. A races come first; a name for which neither row has room is left out, its line stays.
 *
 * @param width pixels of the drawing
 */
export function raceLabels(
  races: readonly { readonly x: number; readonly name: string; readonly matters: string }[],
  width: number,
): readonly RaceLabel[] {
  const rows: { readonly from: number; readonly to: number }[][] = [[], []];
  const labels = new Map<number, RaceLabel>();
  const order = races.map((_, at) => at);
  const rank = (at: number) => (races[at]!.matters === "A" ? 0 : 1);
  for (const at of order.sort((a, b) => rank(a) - rank(b) || a - b)) {
    const { x, name } = races[at]!;
    const text = shortRace(name);
    const half = (text.length * letter) / 2;
    const middle = Math.max(half, Math.min(width - half, x));
    const [from, to] = [middle - half - apart, middle + half + apart];
    const free = rows.findIndex((taken) => taken.every((one) => to <= one.from || from >= one.to));
    rows[free]?.push({ from: from + apart, to: to - apart });
    labels.set(at, { text, middle, row: free < 0 ? null : (free as 0 | 1) });
  }
  return races.map((_, at) => labels.get(at)!);
}
