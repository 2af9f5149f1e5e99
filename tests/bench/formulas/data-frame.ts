import { desc, op, table } from "arquero";
import { baselineSessions, type Figures, recentSessions } from "./figures";
import { place, reps, type SetRows } from "./set-rows";

type Row = Readonly<Record<string, number>> & { readonly athlete: string };

/** The same figures with a library of data frames, from the rows as the spreadsheet passes them. */
export function dataFrameFigures({ cells, athletes }: SetRows): Figures {
  const rows = cells.slice(1);
  const number = (index: number) =>
    rows.map((row) => (typeof row[index] === "number" ? (row[index] as number) : null));
  const repColumns = Array.from({ length: reps }, (_, rep) => number(place.rep + rep));
  const sets = table({
    athlete: rows.map((row) => row[place.athlete] as string),
    day: rows.map((row) => Math.floor((row[place.day] as Date).getTime() / 86_400_000)),
    kind: rows.map((row) => row[place.kind] as string),
    number: number(place.set),
    kg: number(place.load),
    ...Object.fromEntries(repColumns.map((column, rep) => [`r${rep + 1}`, column])),
  }).derive({
    fastest: (d: Row) =>
      op.greatest(
        d.r1 ?? 0,
        op.greatest(d.r2 ?? 0, op.greatest(d.r3 ?? 0, op.greatest(d.r4 ?? 0, d.r5 ?? 0))),
      ),
    final: (d: Row) => d.r5 ?? d.r4 ?? d.r3 ?? d.r2 ?? d.r1,
  });
  const loss = sets.derive({ loss: (d: Row) => (d.fastest! - d.final!) / d.fastest! });
  const lines = sets
    .groupby("athlete")
    .rollup({ line: (d: Row) => op.covariance(d.kg!, d.fastest!) / op.variance(d.kg!) });
  const markers = sets.filter((d: Row) => (d.kind as unknown) === "marker").groupby("athlete");
  const mean = { mean: (d: Row) => op.mean(d.fastest!) };
  const before = markers
    .orderby("day")
    .derive({ nth: () => op.row_number() })
    .params({ most: baselineSessions })
    .filter((d: Row, $: Row) => d.nth! <= $.most!)
    .rollup(mean);
  const now = markers
    .orderby(desc("day"))
    .derive({ nth: () => op.row_number() })
    .params({ most: recentSessions })
    .filter((d: Row, $: Row) => d.nth! <= $.most!)
    .rollup(mean);
  const latest = sets
    .filter((d: Row) => (d.kind as unknown) === "work")
    .groupby("athlete")
    .filter((d: Row) => d.day === op.max(d.day!))
    .orderby("number");
  const first = new Map<string, Row>();
  const last = new Map<string, Row>();
  for (const row of latest.objects() as Row[]) {
    if (!first.has(row.athlete)) first.set(row.athlete, row);
    else if (row.kg === first.get(row.athlete)?.kg) last.set(row.athlete, row);
  }
  const byAthlete = (of: { objects: () => object[] }, name: string) =>
    new Map((of.objects() as Row[]).map((row) => [row.athlete, row[name] as number]));
  const [slopes, befores, nows] = [
    byAthlete(lines, "line"),
    byAthlete(before, "mean"),
    byAthlete(now, "mean"),
  ];
  return {
    loss: [...(loss.array("loss") as Iterable<number>)],
    setToSet: athletes.map((name) => against(first.get(name) as Row, last.get(name) as Row)),
    line: athletes.map((name) => slopes.get(name) ?? Number.NaN),
    hold: athletes.map((name) => (nows.get(name) ?? Number.NaN) / (befores.get(name) ?? 0) - 1),
  };
}

function against(first: Row, last: Row): number {
  let [a, b] = [0, 0];
  for (let rep = 1; rep <= reps; rep++) {
    const [one, other] = [first[`r${rep}`] ?? null, last[`r${rep}`] ?? null];
    if (one === null || other === null) continue;
    a += one;
    b += other;
  }
  return b / a - 1;
}
