import { chartWords as words } from "../words/charts";
import { type NumberStyle, printedNumbers } from "../words/printed-numbers";
import { ChartFrame } from "./chart-frame";
import { at, scale, ticks } from "./scale";

export type LineChartGiven = {
  readonly exercise: string;
  readonly points: readonly {
    readonly loadKg: number;
    readonly speed: number;
    readonly latest: boolean;
  }[];
  readonly line: readonly {
    readonly loadKg: number;
    readonly speed: number;
    readonly low: number;
    readonly high: number;
  }[];
  readonly inWords: string;
  readonly numbers: NumberStyle;
};

const height = 150;
const box = { left: 34, right: 270, top: 8, bottom: 122 };

/** Bar speed against load in the coach's unit: sets, the line, the band nine new sets in ten fall in, the latest day larger. */
export function LineChart({ exercise, points, line, inWords, numbers }: LineChartGiven) {
  const { unit, amount, marked, speed: speedText } = printedNumbers(numbers);
  const loads = [...points, ...line].map(({ loadKg }) => amount(loadKg));
  const speeds = [
    ...points.map(({ speed }) => speed),
    ...line.flatMap(({ low, high }) => [low, high]),
  ];
  const [minLoad, maxLoad] = [Math.min(...loads), Math.max(...loads)];
  const [minSpeed, maxSpeed] = [Math.min(...speeds), Math.max(...speeds)];
  const x = scale(minLoad, maxLoad, box.left + 4, box.right - 4);
  const placeOf = (loadKg: number) => x(amount(loadKg));
  const y = scale(maxSpeed, minSpeed, box.top, box.bottom);
  const path = (values: readonly (readonly [number, number])[]) =>
    values.map(([a, b], i) => `${i === 0 ? "M" : "L"}${at(placeOf(a))} ${at(y(b))}`).join("");
  const upper = line.map(({ loadKg, high }) => [loadKg, high] as const);
  const lower = [...line].reverse().map(({ loadKg, low }) => [loadKg, low] as const);
  return (
    <ChartFrame height={height} title={words.lineTitle(exercise)} inWords={inWords}>
      <path class="band" d={`${path([...upper, ...lower])}Z`} />
      <path class="level" d={path(line.map(({ loadKg, speed }) => [loadKg, speed] as const))} />
      {points.map(({ loadKg, speed, latest }, i) => (
        <circle
          // Sets have no name of their own; their order is their place.
          key={`${i}-${loadKg}-${speed}`}
          class={latest ? "dot" : "dot-old"}
          cx={at(placeOf(loadKg))}
          cy={at(y(speed))}
          r={latest ? 4 : 2}
        />
      ))}
      {ticks(minSpeed, maxSpeed, 4).map((speed) => (
        <text key={speed} class="tick" x={box.left - 4} y={at(y(speed) + 4)} text-anchor="end">
          {speedText(speed)}
        </text>
      ))}
      <line class="axis" x1={box.left} x2={box.right} y1={box.bottom} y2={box.bottom} />
      {ticks(minLoad, maxLoad, 5).map((load) => (
        <text key={load} class="tick" x={at(x(load))} y={box.bottom + 12} text-anchor="middle">
          {marked(String(load))}
        </text>
      ))}
      <text class="key" x={box.left} y={height - 2}>
        {words.lineKey(unit)}
      </text>
    </ChartFrame>
  );
}
