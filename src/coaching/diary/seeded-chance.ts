/** Held here, as looking a global up is slow in the sandboxed realms a spreadsheet's script runs in. */
const { imul } = Math;

/**
 * Uniform numbers from a text: the same athlete and day always give the same shuffles, so that a
 * formula answers alike on every recalculation. FNV-1a seeds a 32-bit mixer; both are in the public
 * domain.
 */
export function seededChance(text: string): () => number {
  let state = 0x811c9dc5;
  for (const sign of text) state = imul(state ^ sign.codePointAt(0)!, 0x01000193);
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
