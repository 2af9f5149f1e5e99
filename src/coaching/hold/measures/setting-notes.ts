import type { Day } from "../../calendar/day";
import { usualRules } from "../../record/squad-rules";
import type { Setting, SpeedSet } from "../../series/speed-set";
import type { HoldNote } from "../season-hold";
import type { SeasonDays } from "./season-measure";

/** So many sessions in another setting would make a baseline of their own. */
const ownBaseline = usualRules.baselineSessions;

/** How one setting differs from another, first by its tool. */
export type OtherSetting = {
  readonly what: keyof Setting;
  readonly before: string | number;
  readonly after: string | number;
};

/** Null where they are the same. */
export function otherSetting(setting: Setting, usual: Setting): OtherSetting | null {
  const what = (["tool", "gym", "speedIs", "barKg", "figure"] as const).find(
    (field) => setting[field] !== usual[field],
  );
  return what ? { what, before: usual[what] ?? "", after: setting[what] ?? "" } : null;
}

/** One note for each way another setting differs: how many sessions, since when, from what. */
export function settingNotes(
  season: readonly SpeedSet[],
  usual: Setting,
  { baselineTo }: SeasonDays,
): readonly HoldNote[] {
  const changes = new Map<string, OtherSetting & { readonly days: Day[] }>();
  for (const { setting, day } of firstOfDays(season)) {
    const other = otherSetting(setting, usual);
    if (!other) continue;
    const key = `${other.what} ${other.after}`;
    const known = changes.get(key);
    if (known) known.days.push(day);
    else changes.set(key, { ...other, days: [day] });
  }
  return [...changes.values()].map(({ days, ...how }) => {
    const note = settingChanged(days, how);
    return days[0]! <= baselineTo ? { ...note, code: "setting-changed-in-baseline" } : note;
  });
}

/** What is said of sessions, the first of them first, that differ from the baseline's in how they were done or taken. */
export const settingChanged = (
  days: readonly Day[],
  how: Record<"what" | "before" | "after", string | number> & { readonly of?: string },
): HoldNote => ({
  code: "setting-changed",
  facts: {
    sessions: days.length,
    sinceDay: days[0]!,
    ...how,
    ownBaseline: days.length >= ownBaseline ? 1 : 0,
  },
});

/** The first set of each day. */
export function firstOfDays<Set extends SpeedSet>(sets: readonly Set[]): readonly Set[] {
  return sets.filter(({ day }, i) => sets[i - 1]?.day !== day);
}
