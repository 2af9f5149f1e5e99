import { at } from "./scale";

const middle = 14;
const start = 14;
/** Outline by mass, pixels: the figure stands beside the drawing, so only the order must show. */
const heightOf = (massKg: number) => Math.max(12, Math.min(27, 13 + massKg * 0.65));
const widthOf = (massKg: number) => (massKg >= 10 ? 8.5 : 6.5);

/** One side of the bar, small, for a line of a printed table: the words stand beside it. */
export function PlatesRow({ side }: { readonly side: readonly number[] }) {
  let x = start;
  const plates = side.map((massKg) => {
    const place = x;
    x += widthOf(massKg) + 1.5;
    return { massKg, place };
  });
  const end = Math.max(x + 4, 50);
  return (
    <svg
      class="chart plates"
      viewBox={`0 0 ${at(end)} 28`}
      width={at(end)}
      height="28"
      aria-hidden="true"
    >
      <line class="bar-shaft" x1={0} x2={10} y1={middle} y2={middle} />
      <rect class="bar-sleeve" x={11} y={middle - 1.7} width={at(end - 12)} height={3.4} />
      <rect class="bar-collar" x={10} y={middle - 4} width={2.2} height={8} />
      {plates.map(({ massKg, place }, i) => (
        <rect
          // Two plates of one mass differ only by their place on the bar.
          key={`${i}-${massKg}`}
          class="plate"
          x={at(place)}
          y={at(middle - heightOf(massKg) / 2)}
          width={widthOf(massKg)}
          height={at(heightOf(massKg))}
          rx={1.5}
        />
      ))}
    </svg>
  );
}
