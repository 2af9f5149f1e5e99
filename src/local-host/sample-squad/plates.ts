/** Plates of the invented gym: stamped mass kg, thickness cm by calliper, number owned. */
export const gymPlates = [
  [25, 4.5, 4],
  [20, 4.3, 16],
  [15, 3.6, 6],
  [10, 2.9, 6],
  [5, 2.2, 6],
  [2.5, 1.6, 8],
  [1.25, 1.2, 6],
] as const;

const base = { massKg: 20, cm: 4.3 };
const tops = [
  { text: "", cm: 0 },
  { text: "+1.25", cm: 1.2 },
  { text: "+2.5", cm: 1.6 },
  { text: "+5", cm: 2.2 },
  { text: "+10", cm: 2.9 },
  { text: "+15", cm: 3.6 },
];

const stacks = [6, 7, 8, 9, 10].flatMap((count) =>
  tops.map(({ text, cm }) => ({
    text: `${count}x${base.massKg}${text}`,
    mm: Math.round(10 * (count * base.cm + cm)),
  })),
);

/** Highest stack of 20 kg plates, with one thinner plate on top, not above a height; and the next. */
export function stackUpTo(heightCm: number): { readonly text: string; readonly nextText: string } {
  const above = stacks.findIndex(({ mm }) => mm > 10 * heightCm);
  if (above < 1) throw new Error(`No stack of this gym stands near ${heightCm} cm.`);
  return { text: stacks[above - 1]!.text, nextText: stacks[above]!.text };
}
