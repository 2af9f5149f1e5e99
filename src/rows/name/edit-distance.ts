/**
 * Fewest single changes between two words: letter put in, left out, changed, or two neighbours
 * swapped (restricted Damerau–Levenshtein distance; Damerau 1964, Commun. ACM 7(3):171).
 *
 * @param most beyond so many changes the answer only says that there are more: letters further apart
 * than that are never matched, so long words take no longer than they are long (Ukkonen 1985,
 * Inf. Control 64:100)
 */
export function editDistance(a: string, b: string, most = Number.POSITIVE_INFINITY): number {
  const far = Number.POSITIVE_INFINITY;
  if (Math.abs(a.length - b.length) > most) return far;
  let last = Array.from({ length: b.length + 1 }, (_, at) => (at > most ? far : at));
  let before = last;
  for (let i = 1; i <= a.length; i++) {
    const from = Math.max(1, i - most);
    const to = Math.min(b.length, i + most);
    const row = Array<number>(b.length + 1).fill(far);
    row[0] = i > most ? far : i;
    let nearest = row[0];
    for (let j = from; j <= to; j++) {
      const same = a[i - 1] === b[j - 1];
      let least = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + (same ? 0 : 1));
      if (a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, before[j - 2]! + 1);
      row[j] = least;
      if (least < nearest) nearest = least;
    }
    if (nearest > most + 1) return far;
    before = last;
    last = row;
  }
  return last[b.length]!;
}
