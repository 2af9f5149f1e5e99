import type { Day } from "../calendar/day";
import type { DiaryDay } from "../record/diary-day";
import { exerciseKey } from "../record/exercise-key";
import type { JumpAttempt } from "../record/jump-attempt";
import type { LiftingSet } from "../record/lifting-set";
import { nameKey } from "../record/name-key";
import { inOrder, OrderWatch } from "./in-order";
import { remembered } from "./remembered";
import { type SpeedSet, speedSetReader, withLeads } from "./speed-set";

/** One athlete's rows up to the day asked for, each list in order of day, time and row. */
export type AthleteRows = {
  /** `nameKey` of the name. */
  readonly key: string;
  /** The name as first written in the rows. */
  readonly athlete: string;
  /** Marker and work sets with a speed, by `exerciseKey`. */
  readonly lifts: ReadonlyMap<string, readonly SpeedSet[]>;
  /** By `nameKey` of the test. */
  readonly jumps: ReadonlyMap<string, readonly JumpAttempt[]>;
  readonly diary: readonly DiaryDay[];
};

/** The squad's rows, sorted once and laid out by athlete. */
export type SquadIndex = {
  readonly asOf: Day;
  /** By `nameKey`; only athletes with at least one row, in order of key. */
  readonly athletes: ReadonlyMap<string, AthleteRows>;
  /** One athlete's rows by any spelling of the name, undefined when there are none. */
  readonly of: (athlete: string) => AthleteRows | undefined;
};

type Gathering = {
  readonly key: string;
  readonly athlete: string;
  readonly lifts: Map<string, LiftSets>;
  readonly jumps: Map<string, JumpAttempt[]>;
  readonly diary: DiaryDay[];
};

/**
 * Lays the rows of a squad out by athlete, lift and test in one pass, so that every measure of every
 * athlete reads only its own rows. Rows after `asOf` are not yet known and are left out.
 */
export function squadIndex(
  rows: {
    readonly sets?: readonly LiftingSet[];
    readonly jumps?: readonly JumpAttempt[];
    readonly diary?: readonly DiaryDay[];
  },
  asOf: Day,
): SquadIndex {
  const found = new Map<string, Gathering>();
  // Names repeat thousands of times: each spelling is keyed once.
  const gatheringOf = remembered((name: string) => {
    const key = nameKey(name);
    return found.get(key) ?? added(found, key, name);
  });
  const liftOf = remembered(exerciseKey);
  const testOf = remembered(nameKey);
  const speedSetOf = speedSetReader();

  // An athlete's sets of one lift come in runs: the list written to last is the likely one.
  let lastAthlete: string | null = null;
  let lastLift: string | null = null;
  let gathering: Gathering | null = null;
  let list: LiftSets | null = null;
  const { sets = [] } = rows;
  for (let at = 0; at < sets.length; at++) {
    const set = sets[at]!;
    if (set.day > asOf) continue;
    const { athlete } = set;
    if (gathering === null || athlete !== lastAthlete) {
      gathering = gatheringOf(athlete);
      lastAthlete = athlete;
      list = null;
    }
    const speedSet = speedSetOf(set);
    if (speedSet === null) continue;
    const { exercise } = set;
    if (list === null || exercise !== lastLift) {
      list = madeOnce(gathering.lifts, liftOf(exercise), () => new LiftSets());
      lastLift = exercise;
    }
    list.add(speedSet);
  }
  for (const jump of rows.jumps ?? []) {
    if (jump.day <= asOf)
      madeOnce(gatheringOf(jump.athlete).jumps, testOf(jump.test), () => []).push(jump);
  }
  for (const day of rows.diary ?? []) {
    if (day.day <= asOf) gatheringOf(day.athlete).diary.push(day);
  }
  const athletes = new Map<string, AthleteRows>();
  for (const key of [...found.keys()].sort()) {
    const { athlete, lifts, jumps, diary } = found.get(key)!;
    athletes.set(key, {
      key,
      athlete,
      lifts: eachOf(lifts, (sets) => withLeads(sets.ordered())),
      jumps: eachOf(jumps, (attempts) => inOrder(attempts, (attempt) => attempt)),
      diary: inOrder(diary, (day) => day),
    });
  }
  return { asOf, athletes, of: (athlete) => athletes.get(nameKey(athlete)) };
}

function added(found: Map<string, Gathering>, key: string, athlete: string): Gathering {
  const gathering = { key, athlete, lifts: new Map(), jumps: new Map(), diary: [] };
  found.set(key, gathering);
  return gathering;
}

/** One athlete's sets of one lift as they come, mostly in order already: told on the way, while the row is at hand. */
class LiftSets {
  private readonly sets: SpeedSet[] = [];
  private readonly order = new OrderWatch();

  add(set: SpeedSet): void {
    this.sets.push(set);
    if (this.order.kept) this.order.keeps(set.set);
  }

  /** In order of day, time and row. */
  ordered(): readonly SpeedSet[] {
    return this.order.kept ? this.sets : inOrder(this.sets, ({ set }) => set);
  }
}

function eachOf<List, Rows>(
  lists: ReadonlyMap<string, List>,
  work: (rows: List) => Rows,
): ReadonlyMap<string, Rows> {
  return new Map([...lists.keys()].sort().map((key) => [key, work(lists.get(key)!)]));
}

function madeOnce<Value>(all: Map<string, Value>, key: string, made: () => Value): Value {
  const known = all.get(key);
  if (known !== undefined) return known;
  const value = made();
  all.set(key, value);
  return value;
}
