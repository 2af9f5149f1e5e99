import type { Day } from "../../calendar/day";
import type { HoldNote, SeasonHold } from "../season-hold";
import { howAllChanged, readOf } from "./how-all-changed";

/** Athletes, and share of those followed, that changed together before a date is suspected. */
const leastAthletes = 3;
const leastShare = 1 / 3;

/** Whether a season's change is of this word and reading and may have begun on this day. */
export function mayShare(hold: SeasonHold, { word, day, reading }: HoldNote["facts"]): boolean {
  return (
    hold.word === word &&
    readOf(hold.value!.kind) === reading &&
    hold.sinceFrom! <= Number(day) &&
    Number(day) <= hold.sinceTo!
  );
}

/**
 * Dates from which many athletes change the same way in what the same tool reads: a tool, a floor or a
 * plate that changed moves all of them, athletes' own seasons seldom do. An athlete counts where the
 * range of likely onsets holds the date, for who comes once a week meets a new tool days after others.
 *
 * In 50 simulated squads of twelve, 94 to 100 % are told of an encoder that reads 8 % off, 46 % of one 5 %
 * off and 53 % of a mat 12 ms off; none of a calm season's dates, 8 % where half the athletes fall by
 * 6 % on dates of their own within ten weeks.
 */
export function sharedDates(squad: readonly SeasonHold[]): readonly HoldNote[] {
  const followed = squad.filter(({ word }) => word !== "too few rows").length;
  return (["slipping", "rising"] as const).flatMap((word) => {
    let best: { readonly day: Day; readonly athletes: number; readonly reading: string } | null =
      null;
    for (const hold of squad) {
      if (hold.word !== word) continue;
      const facts = { word, day: hold.sinceDay!, reading: readOf(hold.value!.kind) };
      const athletes = squad.filter((one) => mayShare(one, facts)).length;
      if (athletes > (best?.athletes ?? 0)) best = { ...facts, athletes };
    }
    const many = best && best.athletes >= leastAthletes && best.athletes >= leastShare * followed;
    if (!many) return [];
    const facts = { word, followed, ...best };
    return [{ code: "one-date", facts: { ...facts, how: howAllChanged(squad, facts) } }];
  });
}
