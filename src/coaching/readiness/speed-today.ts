import { speedOnLine } from "../bar-speed/expected-speed";
import { leadSpeed } from "../bar-speed/lead-speed";
import { lineFit } from "../bar-speed/line-fit";
import type { SquadLift } from "../bar-speed/squad-lift";
import { lineRows } from "../bar-speed/squad-lines";
import type { Day } from "../calendar/day";
import { grouped } from "../series/grouped";
import type { SpeedSet } from "../series/speed-set";
import type { Dated } from "./past-values";
import type { ReadinessSettings } from "./readiness-settings";

/** A day's speed against the athlete's load–speed line of the days before. */
export type SpeedToday = {
  readonly today: number;
  readonly usual: number;
  /** Percent of the usual speed at that load. */
  readonly offLine: number;
  readonly lineError: number;
  /** The same of earlier days, latest last. */
  readonly past: readonly Dated[];
};

/**
 * Reads a day's marker set, or its first work set, against the line through earlier days in the same
 * setting, recent ones weighing more. Earlier days are read by the same kind of set where four or
 * more have it.
 *
 * @param sets of one lift, in order
 * @returns null when the day has no such set or earlier days give no line
 */
export function speedToday(
  sets: readonly SpeedSet[],
  day: Day,
  { prior, settings: lineSettings, leads }: SquadLift,
  settings: ReadinessSettings,
): SpeedToday | null {
  const today = speakingSet(sets.filter((set) => set.day === day));
  if (!today) return null;
  const earlier = sets.filter((set) => set.day < day && set.setting === today.setting);
  const line = lineFit(lineRows(earlier), day, prior, lineSettings);
  if (!line) return null;
  const usualOf = ({ loadKg, marker }: SpeedSet) =>
    leadSpeed(line, leads[marker ? "marker" : "work"], loadKg!);
  const usual = usualOf(today);
  if (!(usual > 0)) return null;
  const offLine = (set: SpeedSet) => (100 * (set.speed - usualOf(set))) / usualOf(set);
  const recent = earlier.filter((set) => set.day >= day - settings.pastDays);
  const alike = speakingByDay(recent.filter(({ marker }) => marker === today.marker));
  const speaking = alike.length >= settings.leastPast ? alike : speakingByDay(recent);
  return {
    today: today.speed,
    usual,
    offLine: offLine(today),
    lineError: (100 * speedOnLine(line, today.loadKg!).error) / usual,
    past: speaking.slice(-settings.mostPast).map((set) => ({ day: set.day, value: offLine(set) })),
  };
}

/** The marker set, otherwise the first work set, of one day's sets with a load. */
function speakingSet(day: readonly SpeedSet[]): SpeedSet | undefined {
  const loaded = day.filter(({ loadKg }) => loadKg !== null);
  return loaded.find(({ marker }) => marker) ?? loaded[0];
}

function speakingByDay(sets: readonly SpeedSet[]): readonly SpeedSet[] {
  return [...grouped(sets, ({ day }) => day).values()].flatMap((day) => speakingSet(day) ?? []);
}
