import type { Day } from "../calendar/day";
import type { DiaryDay } from "../record/diary-day";
import type { JumpAttempt } from "../record/jump-attempt";
import type { LiftingSet } from "../record/lifting-set";
import { nameKey } from "../record/name-key";

/** One athlete's rows up to the day asked for, each list in order of day, time and row. */
export type AthleteRows = {
  /** `nameKey` of the name. */
  readonly key: string;
  /** The name as first written in the rows. */
  readonly athlete: string;
  readonly sets: readonly LiftingSet[];
  readonly jumps: readonly JumpAttempt[];
  readonly diary: readonly DiaryDay[];
};

/** The squad's rows, sorted once and laid out by athlete. */
export type SquadIndex = {
  readonly asOf: Day;
  /** By `nameKey`; only athletes with at least one row. */
  readonly athletes: ReadonlyMap<string, AthleteRows>;
  /** One athlete's rows by any spelling of the name, undefined when there are none. */
  readonly of: (athlete: string) => AthleteRows | undefined;
};

type Writable<Row> = Row[];
type Gathering = {
  readonly key: string;
  readonly athlete: string;
  readonly sets: Writable<LiftingSet>;
  readonly jumps: Writable<JumpAttempt>;
  readonly diary: Writable<DiaryDay>;
};
type Rowed = { readonly day: Day; readonly row: number; readonly minute?: number | null };

/**
 * Lays the rows of a squad out by athlete in one pass, so that every measure of every athlete reads
 * only its own rows. Rows after `asOf` are not yet known and are left out.
 */
export function squadIndex(
  rows: {
    readonly sets?: readonly LiftingSet[];
    readonly jumps?: readonly JumpAttempt[];
    readonly diary?: readonly DiaryDay[];
  },
  asOf: Day,
): SquadIndex {
  const byName = new Map<string, Gathering>();
  const athletes = new Map<string, Gathering>();
  // Names repeat thousands of times: each spelling is keyed once.
  const at = (name: string): Gathering => {
    const known = byName.get(name);
    if (known) return known;
    const key = nameKey(name);
    let gathering = athletes.get(key);
    if (!gathering) {
      gathering = { key, athlete: name, sets: [], jumps: [], diary: [] };
      athletes.set(key, gathering);
    }
    byName.set(name, gathering);
    return gathering;
  };
  for (const set of rows.sets ?? []) if (set.day <= asOf) at(set.athlete).sets.push(set);
  for (const jump of rows.jumps ?? []) if (jump.day <= asOf) at(jump.athlete).jumps.push(jump);
  for (const day of rows.diary ?? []) if (day.day <= asOf) at(day.athlete).diary.push(day);
  for (const gathering of athletes.values()) {
    inOrder(gathering.sets);
    inOrder(gathering.jumps);
    inOrder(gathering.diary);
  }
  return { asOf, athletes, of: (athlete) => athletes.get(nameKey(athlete)) };
}

/** Sorts in place; rows are mostly in order already, which is checked first. */
function inOrder(rows: Rowed[]): void {
  let sorted = true;
  for (let i = 1; i < rows.length && sorted; i++) sorted = earlier(rows[i - 1]!, rows[i]!) <= 0;
  if (!sorted) rows.sort(earlier);
}

/** Day, then time; a row without a time keeps its place by row number. */
function earlier(a: Rowed, b: Rowed): number {
  const byTime = typeof a.minute === "number" && typeof b.minute === "number";
  return a.day - b.day || (byTime ? a.minute! - b.minute! : 0) || a.row - b.row;
}
