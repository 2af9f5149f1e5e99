import { baselineSessions, type FigureName, recentSessions } from "../figures";
import { place, reps, type SetRows } from "../set-rows";

/** A loop that does nothing but look at every cell: what no program can go below. */
export function touchEveryCell({ cells }: SetRows): number {
  let filled = 0;
  for (const row of cells) for (const cell of row) if (cell !== "") filled++;
  return filled;
}

type Row = readonly unknown[];

function fastestOf(row: Row): number {
  let fastest = 0;
  for (let rep = place.rep; rep < place.rep + reps; rep++) {
    const speed = row[rep];
    if (typeof speed !== "number") break;
    if (speed > fastest) fastest = speed;
  }
  return fastest;
}

function loss({ cells }: SetRows): ArrayLike<number> {
  const losses = new Float64Array(cells.length - 1);
  for (let at = 1; at < cells.length; at++) {
    const row = cells[at] as Row;
    let fastest = 0;
    let last = 0;
    for (let rep = place.rep; rep < place.rep + reps; rep++) {
      const speed = row[rep];
      if (typeof speed !== "number") break;
      if (speed > fastest) fastest = speed;
      last = speed;
    }
    losses[at - 1] = (fastest - last) / fastest;
  }
  return losses;
}

function setToSet({ cells, athletes }: SetRows): ArrayLike<number> {
  const found = new Map<string, { day: number; kg: number; first: Row; last: Row }>();
  for (let at = 1; at < cells.length; at++) {
    const row = cells[at] as Row;
    if (row[place.kind] === "marker") continue;
    const name = row[place.athlete] as string;
    const day = (row[place.day] as Date).getTime();
    const kg = row[place.load] as number;
    const one = found.get(name);
    if (one === undefined) found.set(name, { day, kg, first: row, last: row });
    else if (day !== one.day) {
      one.day = day;
      one.kg = kg;
      one.first = row;
      one.last = row;
    } else if (kg === one.kg) one.last = row;
  }
  return athletes.map((name) => {
    const { first, last } = found.get(name) as { first: Row; last: Row };
    let a = 0;
    let b = 0;
    for (let rep = place.rep; rep < place.rep + reps; rep++) {
      if (typeof first[rep] !== "number" || typeof last[rep] !== "number") continue;
      a += first[rep] as number;
      b += last[rep] as number;
    }
    return b / a - 1;
  });
}

function line({ cells, athletes }: SetRows): ArrayLike<number> {
  const found = new Map<string, { n: number; x: number; y: number; xx: number; xy: number }>();
  for (let at = 1; at < cells.length; at++) {
    const row = cells[at] as Row;
    const name = row[place.athlete] as string;
    const kg = row[place.load] as number;
    let one = found.get(name);
    if (one === undefined) {
      one = { n: 0, x: 0, y: 0, xx: 0, xy: 0 };
      found.set(name, one);
    }
    const speed = fastestOf(row);
    one.n++;
    const off = kg - one.x;
    one.x += off / one.n;
    one.y += (speed - one.y) / one.n;
    one.xx += off * (kg - one.x);
    one.xy += off * (speed - one.y);
  }
  return athletes.map((name) => {
    const { xx, xy } = found.get(name) as { xx: number; xy: number };
    return xy / xx;
  });
}

function hold({ cells, athletes }: SetRows): ArrayLike<number> {
  const found = new Map<string, number[]>();
  for (let at = 1; at < cells.length; at++) {
    const row = cells[at] as Row;
    if (row[place.kind] !== "marker") continue;
    const name = row[place.athlete] as string;
    const speeds = found.get(name);
    if (speeds === undefined) found.set(name, [fastestOf(row)]);
    else speeds.push(fastestOf(row));
  }
  const mean = (of: readonly number[]) => of.reduce((sum, v) => sum + v, 0) / of.length;
  return athletes.map((name) => {
    const speeds = found.get(name) as number[];
    return mean(speeds.slice(-recentSessions)) / mean(speeds.slice(0, baselineSessions)) - 1;
  });
}

/**
 * Each plain figure by hand, in one pass of its own with nothing checked: every cell is taken for what
 * it should be, rows for being in order. The least a program that computes the figure must do.
 */
export const plain: Readonly<Record<FigureName, (rows: SetRows) => ArrayLike<number>>> = {
  loss,
  setToSet,
  line,
  hold,
};
