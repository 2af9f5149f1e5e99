import { desc, op, table } from "arquero";
import { baselineSessions, type FigureName, recentSessions } from "./figures";
import { place, reps, type SetRows } from "./set-rows";

type Row = Readonly<Record<string, number>> & { readonly athlete: string };
type Of = (rows: readonly (readonly unknown[])[]) => readonly unknown[];

const number =
  (index: number): Of =>
  (rows) =>
    rows.map((row) => (typeof row[index] === "number" ? row[index] : null));
const speeds: Readonly<Record<string, Of>> = Object.fromEntries(
  Array.from({ length: reps }, (_, rep) => [`r${rep + 1}`, number(place.rep + rep)]),
);
const athlete: Of = (rows) => rows.map((row) => row[place.athlete]);
const kind: Of = (rows) => rows.map((row) => row[place.kind]);
const day: Of = (rows) =>
  rows.map((row) => Math.floor((row[place.day] as Date).getTime() / 86_400_000));

/** The columns one figure needs, from the rows as the spreadsheet passes them. */
function taken({ cells }: SetRows, columns: Readonly<Record<string, Of>>) {
  const rows = cells.slice(1);
  return table(
    Object.fromEntries(Object.entries({ ...columns, ...speeds }).map(([n, of]) => [n, of(rows)])),
  );
}

const fastest = {
  fastest: (d: Row) =>
    op.greatest(
      d.r1 ?? 0,
      op.greatest(d.r2 ?? 0, op.greatest(d.r3 ?? 0, op.greatest(d.r4 ?? 0, d.r5 ?? 0))),
    ),
};

function byAthlete(of: { objects: () => object[] }, name: string) {
  return new Map((of.objects() as Row[]).map((row) => [row.athlete, row[name] as number]));
}

function loss(rows: SetRows): ArrayLike<number> {
  const sets = taken(rows, {}).derive({
    ...fastest,
    last: (d: Row) => d.r5 ?? d.r4 ?? d.r3 ?? d.r2 ?? d.r1,
  });
  const losses = sets.derive({ loss: (d: Row) => (d.fastest! - d.last!) / d.fastest! });
  return [...(losses.array("loss") as Iterable<number>)];
}

function setToSet(rows: SetRows): ArrayLike<number> {
  const latest = taken(rows, {
    athlete,
    day,
    kind,
    number: number(place.set),
    kg: number(place.load),
  })
    .filter((d: Row) => (d.kind as unknown) === "work")
    .groupby("athlete")
    .filter((d: Row) => d.day === op.max(d.day!))
    .orderby("number");
  const first = new Map<string, Row>();
  const last = new Map<string, Row>();
  for (const row of latest.objects() as Row[]) {
    if (!first.has(row.athlete)) first.set(row.athlete, row);
    if (row.kg === first.get(row.athlete)?.kg) last.set(row.athlete, row);
  }
  return rows.athletes.map((name) => against(first.get(name) as Row, last.get(name) as Row));
}

function line(rows: SetRows): ArrayLike<number> {
  const slopes = byAthlete(
    taken(rows, { athlete, kg: number(place.load) })
      .derive(fastest)
      .groupby("athlete")
      .rollup({ line: (d: Row) => op.covariance(d.kg!, d.fastest!) / op.variance(d.kg!) }),
    "line",
  );
  return rows.athletes.map((name) => slopes.get(name) ?? Number.NaN);
}

function hold(rows: SetRows): ArrayLike<number> {
  const markers = taken(rows, { athlete, day, kind })
    .filter((d: Row) => (d.kind as unknown) === "marker")
    .derive(fastest)
    .groupby("athlete");
  const meanOf = (order: Parameters<typeof markers.orderby>[0], most: number) =>
    byAthlete(
      markers
        .orderby(order)
        .derive({ nth: () => op.row_number() })
        .params({ most })
        .filter((d: Row, $: Row) => d.nth! <= $.most!)
        .rollup({ mean: (d: Row) => op.mean(d.fastest!) }),
      "mean",
    );
  const before = meanOf("day", baselineSessions);
  const now = meanOf(desc("day"), recentSessions);
  return rows.athletes.map((name) => (now.get(name) ?? Number.NaN) / (before.get(name) ?? 0) - 1);
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

/** The plain figures with a library of data frames, each from the columns it needs. */
export const dataFrame: Readonly<Record<FigureName, (rows: SetRows) => ArrayLike<number>>> = {
  loss,
  setToSet,
  line,
  hold,
};
