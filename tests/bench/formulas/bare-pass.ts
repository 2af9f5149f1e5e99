import { baselineSessions, type Figures, recentSessions } from "./figures";
import { place, reps, type SetRows } from "./set-rows";

/** A loop that does nothing but look at every cell: what no program can go below. */
export function touchEveryCell({ cells }: SetRows): number {
  let filled = 0;
  for (const row of cells) for (const cell of row) if (cell !== "") filled++;
  return filled;
}

type One = {
  day: number;
  firstKg: number;
  first: readonly unknown[];
  last: readonly unknown[];
  n: number;
  meanX: number;
  meanY: number;
  sxx: number;
  sxy: number;
  markers: number[];
};

/**
 * The same figures by hand, in one pass, with nothing checked: every cell is taken for what it should
 * be, rows for being in order. The least a program that computes them must do.
 */
export function barePass({ cells, athletes }: SetRows): Figures {
  const loss = new Float64Array(cells.length - 1);
  const found = new Map<string, One>();
  for (let at = 1; at < cells.length; at++) {
    const row = cells[at] as readonly unknown[];
    let fastest = 0;
    let final = 0;
    for (let rep = 0; rep < reps; rep++) {
      const speed = row[place.rep + rep];
      if (typeof speed !== "number") break;
      if (speed > fastest) fastest = speed;
      final = speed;
    }
    loss[at - 1] = (fastest - final) / fastest;
    const name = row[place.athlete] as string;
    const day = Math.floor((row[place.day] as Date).getTime() / 86_400_000);
    const kg = row[place.load] as number;
    let one = found.get(name);
    if (one === undefined) {
      one = {
        day: -1,
        firstKg: 0,
        first: row,
        last: row,
        n: 0,
        meanX: 0,
        meanY: 0,
        sxx: 0,
        sxy: 0,
        markers: [],
      };
      found.set(name, one);
    }
    one.n++;
    const dx = kg - one.meanX;
    one.meanX += dx / one.n;
    one.meanY += (fastest - one.meanY) / one.n;
    one.sxx += dx * (kg - one.meanX);
    one.sxy += dx * (fastest - one.meanY);
    if (row[place.kind] === "marker") one.markers.push(fastest);
    else if (day !== one.day) {
      one.day = day;
      one.firstKg = kg;
      one.first = row;
      one.last = row;
    } else if (kg === one.firstKg) one.last = row;
  }
  const each = athletes.map((name) => found.get(name) as One);
  return {
    loss,
    setToSet: each.map(({ first, last }) => {
      let a = 0;
      let b = 0;
      for (let rep = place.rep; rep < place.rep + reps; rep++) {
        if (typeof first[rep] !== "number" || typeof last[rep] !== "number") continue;
        a += first[rep] as number;
        b += last[rep] as number;
      }
      return b / a - 1;
    }),
    line: each.map(({ sxx, sxy }) => sxy / sxx),
    hold: each.map(({ markers }) => {
      const mean = (of: readonly number[]) => of.reduce((sum, v) => sum + v, 0) / of.length;
      return mean(markers.slice(-recentSessions)) / mean(markers.slice(0, baselineSessions)) - 1;
    }),
  };
}
