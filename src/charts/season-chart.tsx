import { chartWords as words } from "../words/charts";
import { ChartFrame, chartWidth } from "./chart-frame";
import { dayNumber, monthStarts } from "./day-axis";
import { Mark, sideOf } from "./mark";
import { raceLabels } from "./race-labels";
import { at, scale } from "./scale";

export type SeasonChartGiven = {
  readonly athlete: string;
  readonly from: string;
  readonly to: string;
  readonly series: readonly {
    readonly name: string;
    readonly points: readonly { readonly day: string; readonly percent: number }[];
    /** Half-width of the band, percent: two of this value's own wobbles. */
    readonly band: number;
    /** Below its baseline the value itself is longer, so the percents at the side are the value's. */
    readonly turned?: boolean;
  }[];
  readonly since: {
    readonly from: string;
    readonly day: string;
    readonly to: string;
    readonly way: "low" | "high";
  } | null;
  readonly races: readonly {
    readonly day: string;
    readonly name: string;
    readonly matters: string;
  }[];
  readonly inWords: string;
};

const left = 34;
const right = 6;
const panel = 62;
const usualTop = 30;
/** Height of one row of races' names. */
const labelRow = 12;
/** Room between panels for the next one's name, clear of both panels' marks. */
const gap = 18;
/** The axis stands this far above the names of the months. */
const axisUp = 12;
/** Height of a tick's figures: two of them nearer than this run into one another. */
const lineOfText = 10;

/**
 * One small panel for each value: percent of the season's own baseline by day, the band of two of
 * its own wobbles either way, points outside it as triangles, races as upright lines (A solid, B and C
 * dashed), and below the days that may hold the onset.
 */
export function SeasonChart(given: SeasonChartGiven) {
  const from = dayNumber(given.from);
  const to = Math.max(dayNumber(given.to), from + 7);
  const x = scale(from, to, left, chartWidth - right);
  const labels = raceLabels(
    given.races.map((race) => ({ ...race, x: x(dayNumber(race.day)) })),
    chartWidth,
  );
  const top = usualTop + (labels.some(({ row }) => row === 1) ? labelRow : 0);
  const bottom = top + given.series.length * (panel + gap);
  const height = bottom + (given.since ? 34 : 20);
  return (
    <ChartFrame height={height} title={words.seasonTitle(given.athlete)} inWords={given.inWords}>
      {given.races.map((race, index) => {
        const label = labels[index]!;
        const row = label.row ?? 0;
        return (
          <g key={`${race.day}${race.name}`}>
            <line
              class={race.matters === "A" ? "race-a" : "race-b"}
              x1={at(x(dayNumber(race.day)))}
              x2={at(x(dayNumber(race.day)))}
              y1={top - 14 - row * labelRow}
              y2={bottom - axisUp}
            />
            {label.row !== null && (
              <text
                class={race.matters === "A" ? "race halo a" : "race halo"}
                x={at(label.middle)}
                y={top - 18 - row * labelRow}
                text-anchor="middle"
              >
                {label.text}
              </text>
            )}
          </g>
        );
      })}
      {given.series.map((one, index) => (
        <Panel key={one.name} {...one} x={x} y0={top + index * (panel + gap)} />
      ))}
      <line
        class="axis"
        x1={left}
        x2={chartWidth - right}
        y1={bottom - axisUp}
        y2={bottom - axisUp}
      />
      {monthStarts(from, to).map(({ day, name }) => (
        <text key={day} class="tick" x={at(x(day) + 2)} y={bottom}>
          {name}
        </text>
      ))}
      {given.since && (
        <g>
          <line
            class={`${given.since.way === "high" ? "rise" : "slip"} thin`}
            x1={at(x(dayNumber(given.since.from)))}
            x2={at(x(dayNumber(given.since.to)))}
            y1={bottom + 10}
            y2={bottom + 10}
          />
          <line
            class={given.since.way === "high" ? "rise" : "slip"}
            x1={at(x(dayNumber(given.since.day)))}
            x2={at(x(dayNumber(given.since.day)))}
            y1={bottom + 5}
            y2={bottom + 15}
          />
          <text class="key" x={left} y={bottom + 30}>
            {words.seasonKey}
          </text>
        </g>
      )}
    </ChartFrame>
  );
}

function Panel({
  name,
  points,
  band,
  turned = false,
  x,
  y0,
}: SeasonChartGiven["series"][number] & {
  readonly x: (day: number) => number;
  readonly y0: number;
}) {
  const reach = Math.max(
    band * 1.4,
    ...points.map(({ percent }) => Math.min(30, Math.abs(percent))),
  );
  const y = scale(reach, -reach, y0, y0 + panel);
  const inside = (percent: number) => Math.max(-reach, Math.min(reach, percent));
  return (
    <g>
      <rect
        class="band"
        x={left}
        width={chartWidth - right - left}
        y={at(y(band))}
        height={at(y(-band) - y(band))}
      />
      <line class="base" x1={left} x2={chartWidth - right} y1={at(y(0))} y2={at(y(0))} />
      <text class="tick" x={left - 4} y={at(y(0) + 4)} text-anchor="end">
        0 %
      </text>
      {[
        { side: turned ? -1 : 1, text: `+${Math.round(band)}` },
        { side: turned ? 1 : -1, text: `−${Math.round(band)}` },
      ].map(({ side, text }) => (
        // A narrow band has its figures beside it, clear of the 0.
        <text
          key={side}
          class="tick"
          x={left - 4}
          y={at(y(0) + 4 - side * Math.max(lineOfText, y(0) - y(band)))}
          text-anchor="end"
        >
          {text}
        </text>
      ))}
      {points.map(({ day, percent }) => (
        <Mark
          key={day}
          cx={x(dayNumber(day))}
          cy={y(inside(percent))}
          side={sideOf(percent, -band, band)}
        />
      ))}
      <text class="key halo" x={left} y={y0 - 6}>
        {turned ? words.longerLower(name) : name}
      </text>
    </g>
  );
}
