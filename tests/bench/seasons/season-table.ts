import type { SquadRules } from "../../../src/coaching/record/squad-rules";
import {
  delay,
  flagged,
  foundWithin,
  honest,
  limitAt,
  medianDelay,
  share,
  type Watched,
} from "./flags";
import { productSays, type Said } from "./product";
import { rivals } from "./rivals";
import { calm, change, novices, type Share, simulateSquad, type Weeks } from "./squad";
import type { SimulatedAthlete, World } from "./world";

/** One season with all that was said in it. */
export type SaidSeason = { readonly athlete: SimulatedAthlete; readonly said: readonly Said[] };

/** Seasons of one kind, by what is true of them. */
export type Seasons = (kind: string, size?: number) => readonly SaidSeason[];

/** Kinds of season in every squad of twenty; half are calm or nearly, as in life. */
export function usualMix({ baselineSessions: baseline }: World): readonly Share[] {
  return [
    calm(7),
    change(5, "step", -5, baseline),
    change(2, "step", -3, baseline),
    change(2, "step", -8, baseline),
    change(1, "step", 5, baseline),
    change(1, "slide", -5, baseline),
    novices(2),
  ];
}

/** Simulates squads and asks the product after every session. */
export function saidSeasons(
  world: World,
  mix: readonly Share[],
  squads: number,
  seed: number,
  asked: {
    /** Also for speeds and strength. */
    readonly withLines?: boolean;
    readonly weeks?: Weeks;
    readonly rules?: SquadRules;
  } = {},
): Seasons {
  const seasons: SaidSeason[] = [];
  for (let squad = 0; squad < squads; squad++) {
    const simulated = simulateSquad(world, mix, seed + squad, asked.weeks);
    const said = productSays(simulated, asked.withLines ?? false, asked.rules);
    simulated.athletes.forEach((athlete, a) => {
      seasons.push({ athlete, said: said[a]! });
    });
  }
  return (kind, size = 0) =>
    seasons.filter(({ athlete }) => athlete.truth.kind === kind && athlete.truth.size === size);
}

/** Seasons as the product called a word in them. */
export function calledBy(seasons: readonly SaidSeason[], word: string): readonly Watched[] {
  return seasons.map(({ athlete, said }) => ({
    athlete,
    falls: said.map((one) => one.word === word),
  }));
}

/** A way to watch, and how it did. */
export type TableRow = {
  readonly name: string;
  /** Share of calm seasons flagged, at the limit in everyday use where there is one. */
  readonly calmAsUsed: number | null;
  readonly calmHere: number;
  /** By size of fall, 3, 5 and 8 %: share found within 4, 6, 8 sessions, then the median delay. */
  readonly falls: readonly { readonly found: readonly number[]; readonly median: number }[];
};

export const fallSizes = [-3, -5, -8] as const;
export const withins = [4, 6, 8] as const;

/** The product and its rivals, each rival at the limit that flags as many calm seasons. */
export function tableRows(seasons: Seasons, world: World): readonly TableRow[] {
  const calmSeasons = seasons("calm");
  const calmProduct = calledBy(calmSeasons, "slipping");
  const rate = flagged(calmProduct);
  const product: TableRow = {
    name: "this product",
    calmAsUsed: rate,
    calmHere: rate,
    falls: fallSizes.map((size) => foundOf(calledBy(seasons("step", size), "slipping"))),
  };
  const { baselineSessions: baseline, correlation } = world;
  const others = rivals(baseline, correlation).map(({ name, usualLimit, path }): TableRow => {
    const calmPaths = (size: number) =>
      calmSeasons.map(({ athlete }) => path(athlete, baseline, size));
    const above = (limit: number) => share(calmPaths(-5).map((p) => p.some((v) => v > limit)));
    return {
      name,
      calmAsUsed: usualLimit === null ? null : above(usualLimit),
      calmHere: above(limitAt(rate, calmPaths(-5))),
      falls: fallSizes.map((size) => {
        const limit = limitAt(rate, calmPaths(size));
        return foundOf(
          seasons("step", size).map(({ athlete }) => ({
            athlete,
            falls: [
              ...athlete.sessions.slice(0, baseline).map(() => false),
              ...path(athlete, baseline, size).map((figure) => figure > limit),
            ],
          })),
        );
      }),
    };
  });
  return [product, ...others];
}

function foundOf(falls: readonly Watched[]) {
  return { found: withins.map((within) => foundWithin(falls, within)), median: medianDelay(falls) };
}

/** Onset error, signs and other truths, from what the product said. */
export type Honesty = {
  readonly onsetNear: number;
  readonly onsetMedian: number;
  /** Falls called a rise and rises called a fall. */
  readonly wrongSign: number;
  readonly riseFound: number;
  readonly slideFound: number;
  readonly noviceRising: number;
  readonly noviceSlipping: number;
};

const nearSessions = 3;

export function honesty(seasons: Seasons): Honesty {
  const steps = [...seasons("step", -5), ...seasons("step", -3), ...seasons("step", -8)];
  const errors: number[] = [];
  for (const { athlete, falls } of honest(calledBy(steps, "slipping"))) {
    const after = delay({ athlete, falls });
    if (!Number.isFinite(after)) continue;
    const at = athlete.truth.onset + after - 1;
    const season = steps.find((one) => one.athlete === athlete)!;
    errors.push(season.said[at]!.since - athlete.truth.onset);
  }
  const rises = seasons("step", 5);
  const wrong = [
    ...honest(calledBy(steps, "rising")).map((one) => Number.isFinite(delay(one))),
    ...honest(calledBy(rises, "slipping")).map((one) => Number.isFinite(delay(one))),
  ];
  return {
    onsetNear: share(errors.map((error) => Math.abs(error) <= nearSessions)),
    onsetMedian: [...errors].sort((a, b) => a - b)[errors.length >> 1] ?? Number.NaN,
    wrongSign: share(wrong),
    riseFound: foundWithin(calledBy(rises, "rising"), 8),
    slideFound: foundWithin(calledBy(seasons("slide", -5), "slipping"), 8),
    noviceRising: flagged(calledBy(seasons("novice"), "rising")),
    noviceSlipping: flagged(calledBy(seasons("novice"), "slipping")),
  };
}
