import type { Day } from "../calendar/day";
import type { HoldNote, SeasonHold } from "./season-hold";

/** Athletes, and share of those followed, that changed together before a date is suspected. */
const leastAthletes = 3;
const leastShare = 1 / 3;
/** Likeliest onsets may lie this many days apart and still be one date. */
const nearDays = 4;

/**
 * Dates from which many athletes change the same way: a tool, a floor or a plate that changed moves
 * all of them, athletes' own seasons seldom do.
 */
export function sharedDates(squad: readonly SeasonHold[]): readonly HoldNote[] {
  const followed = squad.filter(({ word }) => word !== "too few rows").length;
  return (["slipping", "rising"] as const).flatMap((word) => {
    const onsets = squad
      .filter((hold) => hold.word === word)
      .map(({ sinceDay }) => sinceDay!)
      .sort((a, b) => a - b);
    let best: { readonly day: Day; readonly athletes: number } = { day: 0, athletes: 0 };
    for (const first of onsets) {
      const near = onsets.filter((day) => day >= first && day <= first + nearDays);
      if (near.length > best.athletes)
        best = { day: near[near.length >> 1]!, athletes: near.length };
    }
    const many = best.athletes >= leastAthletes && best.athletes >= leastShare * followed;
    return many ? [{ code: "one-date", facts: { word, followed, ...best } }] : [];
  });
}
