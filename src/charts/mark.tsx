import { at } from "./scale";

/** Outside the band of what is usual, above or below; 0 inside it. */
export type Side = -1 | 0 | 1;

export function sideOf(value: number, low: number, high: number): Side {
  if (value > high) return 1;
  return value < low ? -1 : 0;
}

/** A dot inside the band, a triangle outside it: shape before colour. */
export function Mark({
  cx,
  cy,
  side,
  size = 1,
  radius = 2.2,
}: {
  readonly cx: number;
  readonly cy: number;
  readonly side: Side;
  /** Smaller in the rows of a table. */
  readonly size?: number;
  /** Of the dot. */
  readonly radius?: number;
}) {
  if (side === 0) return <circle class="dot" cx={at(cx)} cy={at(cy)} r={at(radius * size)} />;
  const reach = 4 * size;
  const [tip, base] = side > 0 ? [-reach, 3 * size] : [reach, -3 * size];
  return (
    <path
      class={side > 0 ? "dot-up" : "dot-down"}
      d={`M${at(cx)} ${at(cy + tip)}L${at(cx - reach)} ${at(cy + base)}H${at(cx + reach)}Z`}
    />
  );
}
