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
  const changes = new Map<string, { what: keyof Setting; after: string | number; days: Day[] }>();
  for (const { setting, day } of firstOfDays(season)) {
    const other = otherSetting(setting, usual);
    if (!other) continue;
    const { what, after } = other;
    const known = changes.get(`${what} ${after}`);
    if (known) known.days.push(day);
    else changes.set(`${what} ${after}`, { what, after, days: [day] });
  }
  return [...changes.values()].map(({ what, after, days }) => {
    const note = settingChanged(days, { what, before: usual[what] ?? "", after });
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
