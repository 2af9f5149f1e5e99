import { chartWords } from "../words/charts";
import { type NumberStyle, printedNumbers } from "../words/printed-numbers";
import { at } from "./scale";

export type BarDrawingGiven = {
  readonly loadKg: number;
  /** Plates on one side, kg, innermost first. */
  readonly plates: readonly number[];
  readonly words: string;
  readonly numbers: NumberStyle;
};

/** Height of a plate's outline by its mass: gyms differ in colour and size, the mass is written on it. */
const plateHeight = (massKg: number) => Math.max(18, Math.min(60, 24 + massKg * 1.5));

const wideOf = (massKg: number) => (massKg >= 10 ? 17 : 14);

/** One side of the bar with its plates. */
export function BarDrawing({ loadKg, plates, words, numbers }: BarDrawingGiven) {
  const { mass, withUnit } = printedNumbers(numbers);
  let x = 44;
  // Very many plates are drawn smaller: past its own width the drawing would run into the words beside it.
  const width = Math.max(140, plates.reduce((sum, massKg) => sum + wideOf(massKg) + 1, x) + 5);
  return (
    <svg
      class="chart"
      viewBox={`0 0 ${width} 66`}
      width="140"
      height="66"
      role="img"
      aria-label={chartWords.bar(withUnit(loadKg), words)}
    >
      <line class="bar-shaft" x1={0} x2={42} y1={33} y2={33} />
      <rect class="bar-collar" x={38} y={26} width={5} height={14} />
      <rect class="bar-sleeve" x={43} y={30} width={width - 48} height={6} />
      {plates.map((massKg, i) => {
        const height = plateHeight(massKg);
        const wide = wideOf(massKg);
        const place = x;
        x += wide + 1;
        return (
          // Two plates of one mass differ only by their place on the bar.
          <g key={`${i}-${massKg}`}>
            <rect
              class="plate"
              x={place}
              y={at(33 - height / 2)}
              width={wide}
              height={at(height)}
              rx={2}
            />
            <text
              class="platelabel"
              x={at(place + wide / 2)}
              y={33}
              text-anchor="middle"
              dominant-baseline="central"
              transform={`rotate(-90 ${at(place + wide / 2)} 33)`}
            >
              {mass(massKg)}
            </text>
          </g>
        );
      })}
    </svg>
  );
}
