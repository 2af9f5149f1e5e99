import type { Day } from "../calendar/day";
import type { HoldMeasure, SeasonHold } from "./season-hold";

/** After so many days without a reading a word is of then, not of now (common practice, no source). */
const oldAfterDays = 14;

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

/**
 * Last day on which a speed was compared whose setting has changed since: nothing of it is seen now, and
 * no loss of it would show; null for other values, and while the setting is the baseline's.
 */
export function lastCompared({ value, measures, sessions, notes }: SeasonHold): Day | null {
  if (value?.kind !== "bar speed") return null;
  const place = measures.findIndex((one) => isSame(one, value));
  const last = lastOf(sessions.filter(({ percents }) => (percents[place] ?? null) !== null));
  const changed = notes.some(
    ({ code, facts }) =>
      code === "setting-changed" && last !== null && Number(facts.sinceDay) > last,
  );
  return changed ? last : null;
}

/** Day of the last reading where the word rests on old ones; null where it is recent, or there is none. */
export function oldSince({ sessions, asOf }: SeasonHold): Day | null {
  const last = lastOf(sessions.filter(({ percents }) => percents.some((one) => one !== null)));
  return last !== null && asOf - last > oldAfterDays ? last : null;
}

/** The sessions are in order of day. */
const lastOf = (sessions: SeasonHold["sessions"]): Day | null =>
  sessions[sessions.length - 1]?.day ?? null;
