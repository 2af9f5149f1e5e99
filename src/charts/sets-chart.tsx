import { chartWords as words } from "../words/charts";
import { ChartFrame } from "./chart-frame";
import { Mark, sideOf } from "./mark";
import { at, scale } from "./scale";

export type SetsChartGiven = {
  readonly sets: readonly {
    readonly set: number;
    readonly percent: number;
    readonly usual: number | null;
    readonly low: number | null;
    readonly high: number | null;
  }[];
  readonly inWords: string;
};

const height = 104;
const box = { left: 34, right: 270, top: 8, bottom: 76 };

/** Each later set against the first, percent, beside the athlete's usual range at that set. */
export function SetsChart({ sets, inWords }: SetsChartGiven) {
  const values = sets.flatMap(({ percent, low, high }) => [percent, low ?? 0, high ?? 0]);
  const high = Math.max(4, ...values);
  const low = Math.min(-4, ...values);
  const y = scale(high, low, box.top, box.bottom);
  const x = scale(1, Math.max(2, ...sets.map(({ set }) => set)), box.left + 14, box.right - 14);
  return (
    <ChartFrame height={height} title={words.setsTitle} inWords={inWords}>
      <line class="base" x1={box.left} x2={box.right} y1={at(y(0))} y2={at(y(0))} />
      {sets.map(({ set, low: from, high: to }) =>
        from === null || to === null ? null : (
          <rect
            key={set}
            class="band"
            x={at(x(set) - 9)}
            width={18}
            y={at(y(to))}
            height={at(Math.max(1, y(from) - y(to)))}
          />
        ),
      )}
      {sets.map(({ set, percent, low: from, high: to }) => {
        const side = sideOf(percent, from ?? percent, to ?? percent);
        const cx = x(set);
        return (
          <g key={set}>
            <Mark cx={cx} cy={y(percent)} side={side} radius={3} />
            <text class="tick" x={at(cx)} y={box.bottom + 12} text-anchor="middle">
              {set}
            </text>
          </g>
        );
      })}
      {[high, 0, low].map((value) => (
        <text key={value} class="tick" x={box.left - 4} y={at(y(value) + 4)} text-anchor="end">
          {`${value < 0 ? "−" : value > 0 ? "+" : ""}${Math.abs(Math.round(value))} %`}
        </text>
      ))}
      <text class="key" x={box.left} y={height - 2}>
        {words.setsKey}
      </text>
    </ChartFrame>
  );
}
