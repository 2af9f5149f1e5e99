import type { Chance } from "./chance";

/** What the simulated seasons are like; every figure can be broken on purpose. */
export type World = {
  readonly athletes: number;
  readonly baselineSessions: number;
  /** Typical errors of bar speed, jump height and contact, percent, and their spread (CV). */
  readonly typicalError: readonly [number, number, number];
  readonly typicalErrorSpread: number;
  /** Correlation between two measures of one session. */
  readonly correlation: number;
  /** Correlation of one session's error with the one before; of bar speed, of the day's part. */
  readonly serial: number;
  /** Share of a first set's variance that is the set's own and not the day's. */
  readonly setShare: number;
  /** Percent that each further set loses, its spread between athletes and between days. */
  readonly setLoss: { readonly mean: number; readonly athletes: number; readonly days: number };
  /** A marker set at one load all season stands before the work sets. */
  readonly markers: boolean;
  /** Share of a session's variance that the whole squad has in common that day. */
  readonly commonDay: number;
  /** Degrees of freedom of the error; Infinity is normal. */
  readonly tails: number;
  readonly offDays: { readonly share: number; readonly size: number };
  readonly misreadings: { readonly share: number; readonly size: number };
  readonly missed: number;
  readonly present: readonly [number, number, number];
  /** Jump heights are read to this step, cm (a plate stack), 0 for a tape or mat. */
  readonly stackStepCm: number;
  /** How far the bar climbs over the season, fraction. */
  readonly climb: number;
  /** Last season's rows are in the tables too. */
  readonly pastSeason: boolean;
};

export const usualWorld: World = {
  athletes: 20,
  baselineSessions: 6,
  typicalError: [4.5, 4, 4.5],
  typicalErrorSpread: 0.25,
  correlation: 0.4,
  serial: 0,
  setShare: 0.2,
  setLoss: { mean: 1, athletes: 0.5, days: 0.5 },
  markers: false,
  commonDay: 0,
  tails: 8,
  offDays: { share: 0.075, size: -5 },
  misreadings: { share: 0, size: -15 },
  missed: 0.1,
  present: [0.95, 0.85, 0.6],
  stackStepCm: 0,
  climb: 0.12,
  pastSeason: false,
};

/** What truly happens to one athlete: percent change at each session of the season. */
export type Truth = {
  readonly kind: "calm" | "step" | "slide" | "novice";
  readonly size: number;
  /** First session of the change, counting the athlete's attended sessions from 0. */
  readonly onset: number;
  /** Which of the three measures change. */
  readonly measures: readonly boolean[];
  /** One bad day on purpose: which session, and percent off all measures. */
  readonly badDay?: { readonly at: number; readonly size: number };
};

export type Session = {
  readonly day: number;
  readonly loadKg: number;
  /** True expected first-set speed that day, m/s. */
  readonly trueSpeed: number;
  /** Observed first-set speed, null when not measured. */
  readonly speed: number | null;
  /** Observed speed of every work set, the first among them; empty when not measured. */
  readonly setSpeeds: readonly number[];
  /** The marker set before them; null without one. */
  readonly marker: { readonly loadKg: number; readonly speed: number } | null;
  readonly jumpCm: number | null;
  readonly contactS: number | null;
  /** Error of each measure in units of its own typical error, for the all-knowing test. */
  readonly scores: readonly (number | null)[];
  /** Percent that the day took off every measure, 0 for an ordinary day. */
  readonly dayOff: number;
};

export type SimulatedAthlete = {
  readonly name: string;
  readonly novice: boolean;
  readonly truth: Truth;
  readonly sessions: readonly Session[];
  readonly typicalError: readonly number[];
  /** Load at 0.30 m/s on the true line at each session, kg. */
  readonly trueStrengthKg: readonly number[];
};

const referenceLoad = 0.75;
/** Share of the best single on the bar in a marker set. */
const markerLoad = 0.6;

/** Work sets by four weeks of a block: 5×5, 3×5, 5×3, 3×3. */
const setsOfBlock = [5, 3, 5, 3] as const;
const weeksOfBlock = 4;

/** True speed at a share of the best single: 1.73 m/s at no load, 0.28 m/s at the best. */
const speedAtShare = (share: number, zeroLoad: number) => zeroLoad - (zeroLoad - 0.28) * share;

/** What an athlete brings to every season. */
export type Traits = {
  readonly bestKg: number;
  readonly zeroLoad: number;
  readonly jumpCm: number;
  readonly contactS: number;
  readonly typicalError: readonly number[];
  /** Percent that each further set loses. */
  readonly setLoss: number;
};

export function drawTraits(world: World, random: Chance): Traits {
  return {
    bestKg: 55 + 80 * random.uniform(),
    zeroLoad: 1.73 * (1 + 0.05 * random.normal()),
    jumpCm: 30 + 25 * random.uniform(),
    contactS: 0.17 + 0.05 * random.uniform(),
    typicalError: world.typicalError.map(
      (te) => te * Math.max(0.4, 1 + world.typicalErrorSpread * random.normal()),
    ),
    setLoss: world.setLoss.mean + world.setLoss.athletes * random.normal(),
  };
}

/** The same athlete a season earlier or later: levels some percent apart, wobble the same. */
export function anotherSeason(traits: Traits, random: Chance): Traits {
  const moved = (value: number) => value * (1 + 0.05 * random.normal());
  return {
    ...traits,
    bestKg: moved(traits.bestKg),
    jumpCm: moved(traits.jumpCm),
    contactS: moved(traits.contactS),
  };
}

/** One athlete's attended sessions, by the world's rules. */
export function simulateAthlete(
  world: World,
  name: string,
  traits: Traits,
  truth: Truth,
  firstDay: number,
  weeks: number,
  aWeek: number,
  commonErrors: ReadonlyMap<number, number>,
  random: Chance,
): SimulatedAthlete {
  const { bestKg: best, zeroLoad, jumpCm: jump, contactS: contact, typicalError } = traits;
  const novice = truth.kind === "novice";
  const sessions: Session[] = [];
  const trueStrengthKg: number[] = [];
  const previous = [0, 0, 0];
  const referenceSpeed = speedAtShare(referenceLoad, zeroLoad);
  for (let week = 0; week < weeks; week++) {
    for (let visit = 0; visit < aWeek; visit++) {
      if (random.uniform() < world.missed) continue;
      const day = firstDay + week * 7 + (visit === 0 ? 1 : 3);
      const at = sessions.length;
      const since = at - truth.onset;
      const moved = (measure: number): number => {
        if (truth.kind === "novice") return 0.3 * at;
        if (truth.kind === "calm" || since < 0 || !truth.measures[measure]) return 0;
        return truth.kind === "step" ? truth.size : truth.size * Math.min(1, (since + 1) / 8);
      };
      const shared = random.heavy(world.tails);
      const common = commonErrors.get(day) ?? 0;
      const tired = random.uniform() < world.offDays.share ? world.offDays.size : 0;
      const dayOff = truth.badDay?.at === at ? truth.badDay.size : tired;
      // A set's own error is no part of the day's, and the jumps share none of it.
      const ownSet = [world.setShare, 0, 0];
      const errors = typicalError.map((te, measure) => {
        const together = world.correlation / (1 - ownSet[measure]!);
        const fresh =
          Math.sqrt(together) * shared + Math.sqrt(1 - together) * random.heavy(world.tails);
        const serial = world.serial * previous[measure]! + Math.sqrt(1 - world.serial ** 2) * fresh;
        previous[measure] = serial;
        const withDay =
          Math.sqrt(1 - world.commonDay) * serial + Math.sqrt(world.commonDay) * common;
        const misread = random.uniform() < world.misreadings.share ? world.misreadings.size : 0;
        return te * Math.sqrt(1 - ownSet[measure]!) * withDay + dayOff + misread;
      });
      const setError = () => typicalError[0]! * Math.sqrt(world.setShare) * random.normal();
      const dayError = errors[0]!;
      errors[0]! += setError();
      const here = typicalError.map(
        (_, measure) => random.uniform() < world.present[measure as 0 | 1 | 2],
      );
      const share = 0.72 * (1 + (world.climb * week) / weeks) + 0.02 * (visit % 2);
      const loadKg = Math.round((best * share) / 2.5) * 2.5;
      const x = typicalError.map((_, measure) => moved(measure) + errors[measure]!);
      const level = speedAtShare(loadKg / best, zeroLoad);
      const trueSpeed = level + (referenceSpeed * moved(0)) / 100;
      const speed = level + (referenceSpeed * x[0]!) / 100;
      const lossToday = traits.setLoss + world.setLoss.days * random.normal();
      const sets = setsOfBlock[Math.floor(week / weeksOfBlock) % setsOfBlock.length]!;
      const setSpeeds = here[0] ? [speed] : [];
      while (here[0] && setSpeeds.length < sets) {
        const off = moved(0) + dayError + setError() - lossToday * setSpeeds.length;
        setSpeeds.push(level + (referenceSpeed * off) / 100);
      }
      const markerKg = Math.round((best * markerLoad) / 2.5) * 2.5;
      const marker =
        world.markers && here[0]
          ? {
              loadKg: markerKg,
              speed:
                speedAtShare(markerKg / best, zeroLoad) +
                (referenceSpeed * (moved(0) + dayError + setError())) / 100,
            }
          : null;
      const height = jump * Math.exp(x[1]! / 100);
      const step = world.stackStepCm;
      sessions.push({
        day,
        loadKg,
        trueSpeed,
        speed: here[0] ? speed : null,
        setSpeeds,
        marker,
        jumpCm: here[1] ? (step > 0 ? Math.floor(height / step) * step : height) : null,
        contactS: here[2] ? contact * Math.exp(-x[2]! / 100) : null,
        scores: x.map((value, measure) => (here[measure] ? value / typicalError[measure]! : null)),
        dayOff,
      });
      trueStrengthKg.push(
        (best * (zeroLoad - 0.3 + (referenceSpeed * moved(0)) / 100)) / (zeroLoad - 0.28),
      );
    }
  }
  return { name, novice, truth, sessions, typicalError, trueStrengthKg };
}
