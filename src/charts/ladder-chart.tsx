import { chartWords as words } from "../words/charts";
import { type NumberStyle, printedNumbers } from "../words/printed-numbers";
import { ChartFrame, chartWidth } from "./chart-frame";
import { at, scale } from "./scale";

export type LadderChartGiven = {
  readonly athlete: string;
  readonly steps: readonly {
    readonly week: string;
    readonly block: string;
    readonly loadKg: number;
  }[];
  readonly numbers: NumberStyle;
};

const height = 84;

/** The weeks ahead as steps: the load's height, the block written on each. */
export function LadderChart({ athlete, steps, numbers }: LadderChartGiven) {
  const { mass, withUnit } = printedNumbers(numbers);
  const loads = steps.map(({ loadKg }) => loadKg);
  const y = scale(Math.max(...loads) * 1.02, Math.min(...loads) * 0.9, 22, 64);
  const step = (chartWidth - 8) / Math.max(1, steps.length);
  const told = steps
    .map(({ week, block, loadKg }) => words.ladderStep(week, block, withUnit(loadKg)))
    .join("; ");
  return (
    <ChartFrame height={height} title={words.ladderTitle(athlete)} inWords={told}>
      {steps.map(({ week, block, loadKg }, i) => (
        <g key={week}>
          <line
            class="level"
            x1={at(4 + i * step)}
            x2={at(4 + (i + 1) * step - 4)}
            y1={at(y(loadKg))}
            y2={at(y(loadKg))}
          />
          <text class="now small" x={at(4 + i * step)} y={at(y(loadKg) - 4)}>
            {`${block} ${mass(loadKg)}`}
          </text>
          <text class="tick" x={at(4 + i * step)} y={height - 4}>
            {week}
          </text>
        </g>
      ))}
    </ChartFrame>
  );
}
