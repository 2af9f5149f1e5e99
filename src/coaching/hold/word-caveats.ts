import type { Day } from "../calendar/day";
import type { HoldMeasure, SeasonHold } from "./season-hold";

/** After so many days without a reading a word is of then, not of now (common practice, no source). */
export const oldAfterDays = 14;

const isSame = (one: HoldMeasure, other: HoldMeasure | null): boolean =>
  one.kind === other?.kind && one.of === other.of;

/**
 * Whether a holding athlete stands lower by as much as would show, in too few sessions to call it: then
 * saying which loss would show reads as if there were none.
 */
export function fallenUncalled({ value, visibleFall }: SeasonHold): boolean {
  return visibleFall !== null && (value?.change ?? 0) <= -visibleFall;
}

/** Whether it is one value that fell, and no other even half as far: it is found late, or not at all. */
export function fallenAlone({ value, measures, visibleFall }: SeasonHold): boolean {
  return (
    measures.length > 1 &&
    measures.every((one) => isSame(one, value) || (one.change ?? 0) > -(visibleFall ?? 0) / 2)
  );
}

/** A value whose setting has changed since it was last compared, and when that was. */
export type LastCompared = {
  readonly measure: HoldMeasure;
  readonly day: Day;
  /** It is the value that is named. */
  readonly named: boolean;
};

/**
 * The first value that was compared last before its setting changed: nothing of it is seen now, and no
 * loss of it would show; null while all settings are the baseline's.
 */
export function lastCompared({
  value,
  measures,
  sessions,
  notes,
}: SeasonHold): LastCompared | null {
  for (const [place, measure] of measures.entries()) {
    const day = lastDayOf(sessions.filter(({ percents }) => (percents[place] ?? null) !== null));
    // A note names the jump it is about, and no lift: one is followed.
    const of = measure.kind === "bar speed" ? undefined : measure.of;
    const changed = notes.some(
      ({ code, facts }) =>
        code === "setting-changed" && facts.of === of && Number(facts.sinceDay) > Number(day),
    );
    if (day !== null && changed) return { measure, day, named: isSame(measure, value) };
  }
  return null;
}

/** Day of the last reading where the word rests on old ones; null where it is recent, or there is none. */
export function oldSince({ sessions, asOf }: SeasonHold): Day | null {
  const last = lastDayOf(sessions.filter(({ percents }) => percents.some((one) => one !== null)));
  return last !== null && asOf - last > oldAfterDays ? last : null;
}

/** The sessions are in order of day. */
const lastDayOf = (sessions: SeasonHold["sessions"]): Day | null =>
  sessions[sessions.length - 1]?.day ?? null;
