import { accept, type Outcome, refuse } from "../../outcome";
import { exerciseKey } from "../record/exercise-key";
import type { SpeedSet } from "../series/speed-set";
import type { SquadIndex } from "../series/squad-index";
import { type SessionPattern, type SetToSet, sessionPattern } from "./set-to-set";
import { squadHabitSpread, usualRange } from "./usual-range";

/** Earlier sessions a habit is read from. */
const mostSessions = 20;

/**
 * Every athlete's last session of one lift up to the index's last day, set against set and against
 * that athlete's own habit; ask by name.
 *
 * Refuses `athlete-not-in-sets`, `no-speed-sets` for the lift, `one-set` when the session has a
 * single work set with a speed, and `set-loads-differ` when no later set has the first set's load.
 */
export function squadSetToSet({
  index,
  exercise,
}: {
  readonly index: SquadIndex;
  readonly exercise: string;
}): (athlete: string) => Outcome<SetToSet> {
  const lift = exerciseKey(exercise);
  const patterns = new Map<string, readonly SessionPattern[]>();
  for (const { key, lifts } of index.athletes.values()) {
    patterns.set(key, sessionPatterns(lifts.get(lift) ?? []));
  }
  const squadSpread = squadHabitSpread(
    [...patterns.values()].map((sessions) => sessions.slice(-mostSessions)),
  );
  return (name) => {
    const athlete = index.of(name);
    if (!athlete) return refuse("athlete-not-in-sets", { athlete: name });
    const sessions = patterns.get(athlete.key)!;
    const last = sessions[sessions.length - 1];
    if (!last) return refuse("no-speed-sets", { exercise });
    if (last.workSets < 2) return refuse("one-set", { day: last.day });
    if (last.later.length === 0) return refuse("set-loads-differ", { day: last.day });
    return accept(againstHabit(last, sessions.slice(0, -1), squadSpread));
  };
}

/** A session's sets, each against the athlete's earlier sessions at that set. */
function againstHabit(
  session: SessionPattern,
  earlier: readonly SessionPattern[],
  squadSpread: number,
): SetToSet {
  const sets = session.later.map(({ set, logChange }) => {
    const past = earlier.flatMap(({ later }) => later.filter((one) => one.set === set));
    const range = usualRange(
      past.map((one) => one.logChange),
      squadSpread,
      session.later.length,
    );
    return { set, logChange, range, past: past.length };
  });
  const left = sets.find(
    ({ logChange, range }) => range && (logChange < range.low || logChange > range.high),
  );
  const known = sets.some(({ range }) => range);
  const last = sets[sets.length - 1]!;
  const second = sets[0]!.set === 2 ? sets[0]! : null;
  return {
    day: session.day,
    setsUsed: session.workSets,
    secondVsFirst: second ? fraction(second.logChange) : null,
    lastVsFirst: fraction(last.logChange),
    usualLastVsFirst: last.range ? fraction(last.range.middle) : null,
    usualSessions: last.past,
    leftUsualAtSet: left?.set ?? null,
    word: left
      ? left.logChange < left.range!.low
        ? "slower than usual"
        : "faster than usual"
      : known
        ? "as usual"
        : "too few rows",
    sets: sets.map(({ set, logChange, range }) => ({
      set,
      change: fraction(logChange),
      usual: range ? fraction(range.middle) : null,
      usualLow: range ? fraction(range.low) : null,
      usualHigh: range ? fraction(range.high) : null,
    })),
    notCompared: session.notCompared,
  };
}

/** The last session and the earlier ones a habit is read from, in order of day. */
function sessionPatterns(sets: readonly SpeedSet[]): readonly SessionPattern[] {
  const patterns: SessionPattern[] = [];
  for (let end = sets.length; end > 0 && patterns.length <= mostSessions; ) {
    let start = end;
    while (start > 0 && sets[start - 1]!.day === sets[end - 1]!.day) start--;
    const pattern = sessionPattern(sets.slice(start, end));
    if (pattern) patterns.push(pattern);
    end = start;
  }
  return patterns.reverse();
}

const fraction = (logPercent: number) => Math.expm1(logPercent / 100);
