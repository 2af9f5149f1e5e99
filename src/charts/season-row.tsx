import { dayNumber } from "./day-axis";
import { Mark, sideOf } from "./mark";
import { at, scale } from "./scale";

export type SeasonRowGiven = {
  readonly from: string;
  readonly to: string;
  readonly points: readonly { readonly day: string; readonly percent: number }[];
  /** Two wobbles, percent. */
  readonly band: number;
  readonly since: string | null;
  readonly way: "low" | "high" | "plain";
  readonly races: readonly { readonly day: string; readonly matters: string }[];
};

const width = 118;
const height = 30;

/**
 * A season in one line of a table: dots in the band of two wobbles, triangles outside it, races
 * upright, and from the day a change is placed its mean, thick. The words beside it say the same.
 */
export function SeasonRow({ from, to, points, band, since, way, races }: SeasonRowGiven) {
  const x = scale(dayNumber(from), Math.max(dayNumber(to), dayNumber(from) + 7), 3, width - 4);
  const reach = Math.max(
    band * 1.8,
    ...points.map(({ percent }) => Math.min(25, Math.abs(percent))),
  );
  const y = scale(reach, -reach, 2, height - 2);
  const inside = (percent: number) => Math.max(-reach, Math.min(reach, percent));
  const after = since === null ? [] : points.filter(({ day }) => day >= since);
  const mean = after.reduce((sum, { percent }) => sum + percent, 0) / Math.max(1, after.length);
  const last = points[points.length - 1];
  return (
    <svg
      class="chart"
      viewBox={`0 0 ${width} ${height}`}
      width={width}
      height={height}
      aria-hidden="true"
    >
      <rect class="band" x={0} width={width} y={at(y(band))} height={at(y(-band) - y(band))} />
      <line class="base" x1={0} x2={width} y1={at(y(0))} y2={at(y(0))} />
      {races
        .filter(({ day }) => day >= from && day <= to)
        .map(({ day, matters }) => (
          <line
            key={`${day}${matters}`}
            class={matters === "A" ? "race-a" : "race-b"}
            x1={at(x(dayNumber(day)))}
            x2={at(x(dayNumber(day)))}
            y1={0}
            y2={height}
          />
        ))}
      {since !== null && after.length > 0 && last && (
        <line
          class={way === "low" ? "slip" : way === "high" ? "rise" : "level"}
          x1={at(x(dayNumber(since)))}
          x2={at(x(dayNumber(last.day)))}
          y1={at(y(inside(mean)))}
          y2={at(y(inside(mean)))}
        />
      )}
      {points.map(({ day, percent }) => (
        <Mark
          key={day}
          cx={x(dayNumber(day))}
          cy={y(inside(percent))}
          side={sideOf(percent, -band, band)}
          size={0.62}
        />
      ))}
    </svg>
  );
}
