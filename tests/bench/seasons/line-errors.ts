import type { LineRow } from "../../../src/coaching/bar-speed/line-fit";
import { usualLineSettings } from "../../../src/coaching/bar-speed/line-settings";
import { loadSpeedLine } from "../../../src/coaching/bar-speed/load-speed-line";
import { squadLift } from "../../../src/coaching/bar-speed/squad-lift";
import { lineRows } from "../../../src/coaching/bar-speed/squad-lines";
import { exerciseKey } from "../../../src/coaching/record/exercise-key";
import { calm, simulateSquad } from "./squad";
import type { World } from "./world";

/** Errors of one way to draw the line, and the squad each is of. */
type Errors = { readonly speed: number[]; readonly strength: number[]; readonly squad: number[] };

/** With so many rows of the athlete known: root mean square errors, speed in m/s, strength as a share. */
export type LineErrors = {
  readonly rows: number;
  readonly product: Rms;
  /** The squad's common slope through the athlete's own mean. */
  readonly squadSlope: Rms;
  /** Least squares through the athlete's rows alone, where it falls; the product on the same cases. */
  readonly ownLine: Rms;
  readonly productThere: Rms;
  /** Share of cases in which the athlete's own line does not exist or rises. */
  readonly noOwnLine: number;
  /** How much larger the product's mean squared error of speed is than that of the other two. */
  readonly beyondSquadSlope: Excess;
  readonly beyondOwnLine: Excess;
};
/** As a share of the other's, pair by pair, with its standard error over squads. */
export type Excess = { readonly share: number; readonly error: number };
export type Rms = { readonly speed: number; readonly strength: number };

export const rowsKnown = [2, 3, 4, 6, 8, 12, 20, 40] as const;
const minimumSpeed = 0.3;
/** A strength further off than this counts as just so far off, or a single wild line would decide. */
const furthest = 0.5;

/**
 * The three ways to draw a load–speed line, each judged on the last session of calm seasons by the
 * speed it expects of the first set and by its strength. The athlete's latest rows before that session
 * are cut to so many; the rest of the squad is known in full. Each way is given the squad's lead of
 * first sets over later ones.
 */
export function lineErrors(world: World, squads: number, seed: number): readonly LineErrors[] {
  const all = rowsKnown.map(() => ({
    product: none(),
    squadSlope: none(),
    ownLine: none(),
    there: none(),
    cases: 0,
  }));
  const lift = exerciseKey("back squat");
  for (let squad = 0; squad < squads; squad++) {
    const simulated = simulateSquad(world, [calm(world.athletes)], seed + squad);
    for (const athlete of simulated.athletes) {
      const place = athlete.sessions.length - 1;
      const session = athlete.sessions[place]!;
      const day = session.day - 1;
      const index = simulated.upTo(day);
      const others: (readonly LineRow[])[] = [];
      let own: readonly LineRow[] = [];
      for (const one of index.athletes.values()) {
        const rows = lineRows(one.lifts.get(lift) ?? []);
        if (one.athlete === athlete.name) own = rows;
        else others.push(rows);
      }
      rowsKnown.forEach((known, at) => {
        if (own.length < known) return;
        const rows = own.slice(-known);
        const { prior, settings, leads } = squadLift([...others, rows], day, usualLineSettings);
        const made = loadSpeedLine(rows, day, prior, settings, leads.work);
        if (!made.ok) return;
        const found = all[at]!;
        const lead = leads.work.offset;
        const add = (errors: Errors, intercept: number, slope: number) => {
          errors.speed.push(intercept + lead + slope * session.loadKg - session.trueSpeed);
          const kg = (minimumSpeed - intercept - lead) / slope;
          const off = kg / athlete.trueStrengthKg[place]! - 1;
          errors.strength.push(Math.max(-furthest, Math.min(furthest, off)));
          errors.squad.push(squad);
        };
        found.cases++;
        add(found.product, made.value.intercept, made.value.slope);
        const slope = commonSlope([...others, rows]);
        const { load, speed } = means(rows);
        add(found.squadSlope, speed - slope * load, slope);
        const alone = commonSlope([rows]);
        if (!(alone < 0)) return;
        add(found.ownLine, speed - alone * load, alone);
        add(found.there, made.value.intercept, made.value.slope);
      });
    }
  }
  return all.map(({ product, squadSlope, ownLine, there, cases }, at) => ({
    rows: rowsKnown[at]!,
    product: rms(product),
    squadSlope: rms(squadSlope),
    ownLine: rms(ownLine),
    productThere: rms(there),
    noOwnLine: 1 - ownLine.speed.length / cases,
    beyondSquadSlope: excess(product, squadSlope),
    beyondOwnLine: excess(there, ownLine),
  }));
}

function none(): Errors {
  return { speed: [], strength: [], squad: [] };
}

/** A squad's athletes share its prior, so squads, not athletes, are what differs by chance. */
function excess(ours: Errors, theirs: Errors): Excess {
  const bySquad = new Map<number, number>();
  let theirSquares = 0;
  ours.speed.forEach((own, i) => {
    const other = theirs.speed[i]!;
    theirSquares += other ** 2;
    const squad = ours.squad[i]!;
    bySquad.set(squad, (bySquad.get(squad) ?? 0) + own ** 2 - other ** 2);
  });
  const sums = [...bySquad.values()];
  const total = sums.reduce((sum, one) => sum + one, 0);
  const mean = total / sums.length;
  const squares = sums.reduce((sum, one) => sum + (one - mean) ** 2, 0);
  const error = Math.sqrt((squares * sums.length) / (sums.length - 1));
  return { share: total / theirSquares, error: error / theirSquares };
}

function rms({ speed, strength }: Errors): Rms {
  const of = (errors: readonly number[]) =>
    Math.sqrt(errors.reduce((sum, error) => sum + error ** 2, 0) / errors.length);
  return { speed: of(speed), strength: of(strength) };
}

function means(rows: readonly LineRow[]) {
  const over = (sum: number) => sum / rows.length;
  return {
    load: over(rows.reduce((sum, { loadKg }) => sum + loadKg, 0)),
    speed: over(rows.reduce((sum, { speed }) => sum + speed, 0)),
  };
}

/** Least-squares slope of speed on load around each athlete's means; NaN when no load differs. */
function commonSlope(squad: readonly (readonly LineRow[])[]): number {
  let squares = 0;
  let products = 0;
  for (const rows of squad) {
    const { load, speed } = means(rows);
    for (const row of rows) {
      squares += (row.loadKg - load) ** 2;
      products += (row.loadKg - load) * (row.speed - speed);
    }
  }
  return squares > 1e-6 ? products / squares : Number.NaN;
}
