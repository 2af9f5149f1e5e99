import { chartWords } from "../words/charts";
import { ChartFrame, chartWidth } from "./chart-frame";
import { dayNumber, monthStarts } from "./day-axis";
import { Mark } from "./mark";
import { at, type Scale, scale } from "./scale";

export type DiaryChartGiven = {
  readonly athlete: string;
  readonly from: string;
  readonly to: string;
  readonly sessions: readonly {
    readonly day: string;
    readonly size: number;
    readonly side: -1 | 0 | 1;
  }[];
  readonly band: number;
  readonly marks: readonly { readonly day: string; readonly kind: MarkKind }[];
  /** What each kind of mark stands for. */
  readonly keys: Readonly<Record<MarkKind, string>>;
  readonly inWords: string;
};
type MarkKind = "pain or illness" | "figure" | "note";

const left = 34;
const right = 6;
const top = 8;
const panel = 76;
const lane = 16;
const lanes = ["pain or illness", "figure", "note"] as const;

/**
 * Sessions in own wobbles by day, the band of ordinary days, unusual ones as triangles; below, one
 * lane for each kind of diary mark. Shapes and places tell them apart, not colours.
 */
export function DiaryChart(given: DiaryChartGiven) {
  const from = dayNumber(given.from);
  const to = Math.max(dayNumber(given.to), from + 7);
  const x = scale(from, to, left, chartWidth - right);
  const reach = Math.max(
    2 * given.band,
    ...given.sessions.map(({ size }) => Math.min(5, Math.abs(size))),
  );
  const y = scale(reach, -reach, top, top + panel);
  const floor = top + panel + 8;
  const height = floor + 16 + lanes.length * 2 * lane;
  return (
    <ChartFrame
      height={height}
      title={chartWords.diaryTitle(given.athlete)}
      inWords={given.inWords}
    >
      <rect
        class="band"
        x={left}
        width={chartWidth - right - left}
        y={at(y(given.band))}
        height={at(y(-given.band) - y(given.band))}
      />
      <line class="base" x1={left} x2={chartWidth - right} y1={at(y(0))} y2={at(y(0))} />
      <text class="tick" x={left - 4} y={at(y(given.band))} text-anchor="end">
        good
      </text>
      <text class="tick" x={left - 4} y={at(y(-given.band) + 8)} text-anchor="end">
        slow
      </text>
      {given.sessions.map(({ day, size, side }) => (
        <Mark
          key={day}
          cx={x(dayNumber(day))}
          cy={y(Math.max(-reach, Math.min(reach, size)))}
          side={side}
        />
      ))}
      <line class="axis" x1={left} x2={chartWidth - right} y1={floor} y2={floor} />
      {monthStarts(from, to).map(({ day, name }) => (
        <text key={day} class="tick" x={at(x(day) + 2)} y={floor + 12}>
          {name}
        </text>
      ))}
      {lanes.map((kind, index) => (
        <Lane
          key={kind}
          kind={kind}
          words={given.keys[kind]}
          days={given.marks.flatMap((mark) => (mark.kind === kind ? [mark.day] : []))}
          x={x}
          y0={floor + 16 + index * 2 * lane}
        />
      ))}
    </ChartFrame>
  );
}

/** One kind of mark: its key with the count of days, and a shape for each day. */
function Lane({
  kind,
  words,
  days,
  x,
  y0,
}: {
  readonly kind: MarkKind;
  readonly words: string;
  readonly days: readonly string[];
  readonly x: Scale;
  readonly y0: number;
}) {
  return (
    <g>
      <text class="key" x={left} y={y0 + 12}>
        {chartWords.days(words, days.length)}
      </text>
      {days.map((day) => (
        <path
          key={day}
          class={`diary-mark ${kind === "note" ? "open" : "full"}`}
          d={shape(kind, Math.max(left - 3, x(dayNumber(day))), y0 + 22)}
        />
      ))}
    </g>
  );
}

/** A filled diamond for words of pain or illness, a tick for a figure, an open square for a note. */
function shape(kind: MarkKind, cx: number, cy: number): string {
  if (kind === "pain or illness") {
    return `M${at(cx)} ${at(cy - 5)}L${at(cx + 5)} ${at(cy)}L${at(cx)} ${at(cy + 5)}L${at(cx - 5)} ${at(cy)}Z`;
  }
  const [half, reach] = kind === "figure" ? [0.75, 5] : [3, 3];
  return `M${at(cx - half)} ${at(cy - reach)}H${at(cx + half)}V${at(cy + reach)}H${at(cx - half)}Z`;
}
