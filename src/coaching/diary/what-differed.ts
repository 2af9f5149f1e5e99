import { certain } from "../../outcome";
import { adjustedForMany } from "../../statistics/false-discovery";
import { studentLimit } from "../../statistics/limits";
import type { Day } from "../calendar/day";
import type { SeasonHold } from "../hold/season-hold";
import type { DiaryDay } from "../record/diary-day";
import type { Run } from "../record/run";
import { itemsOf } from "./diary-item";
import { type Finding, linkLimit } from "./finding";
import { type ItemDays, itemDays } from "./item-days";
import { type ComparedDays, type Slope, slopeOf } from "./link";
import { performanceDays } from "./performance-day";
import { closestStream } from "./permutation";
import { writtenAfter } from "./written-after";

/** One athlete's rows, each list in order of day. */
export type DiaryOfAthlete = {
  readonly athlete: string;
  readonly hold: SeasonHold;
  readonly diary: readonly DiaryDay[];
  readonly runs: readonly Run[];
  /** Minute of each gym day's first set, where known. */
  readonly starts: ReadonlyMap<Day, number>;
};

/** An athlete's items laid out, before anything is said about them. */
export type ItemsOfAthlete = {
  readonly athlete: string;
  readonly items: readonly ItemDays[];
  readonly writtenAfter: number;
};

/** Lays every item of an athlete beside the performance of the same days. */
export function itemsOfAthlete({
  athlete,
  hold,
  diary,
  runs,
  starts,
}: DiaryOfAthlete): ItemsOfAthlete {
  const before = diary.filter((row) => row.day <= hold.asOf && !writtenAfter(row, starts));
  const after = diary.filter((row) => row.day <= hold.asOf && writtenAfter(row, starts));
  const performance = performanceDays(hold);
  return {
    athlete,
    items: itemsOf(before, runs, hold.asOf).map((item) => itemDays(performance, item)),
    writtenAfter: new Set(after.map(({ day }) => day)).size,
  };
}

/**
 * What differed on good and bad days of one athlete, item by item: the difference in performance, its
 * 95 % interval, counts of days, and a permutation p-value held against all items looked at. A day
 * later than the hold's own is not yet known.
 *
 * @param chance uniform numbers in [0, 1); the same chance gives the same answer
 * @returns one finding an item, links first, then by p-value; empty without diary or runs
 */
export function whatDiffered(
  { athlete, items, writtenAfter: after }: ItemsOfAthlete,
  chance: () => number,
): readonly Finding[] {
  const drafts = items.map((days) => {
    return { days, ...closeness(days, [days.compared], chance) };
  });
  return findings(drafts, { athlete, athletes: 1, writtenAfter: after });
}

/** How closely an item goes with performance, before all items are held against one another. */
type Closeness = {
  readonly slope: Slope | null;
  readonly p: number | null;
  /** Place in the streams. */
  readonly stream: number;
};
export type Draft = Closeness & { readonly days: ItemDays };

/** @param groups the item's days athlete by athlete; `days` holds them all */
export function closeness(
  { verdict, compared }: ItemDays,
  groups: readonly ComparedDays[],
  chance: () => number,
): Closeness {
  const none = { slope: null, p: null, stream: 0 };
  if (verdict !== "compare" || !slopeOf(compared, compared.streams[0]!)) return none;
  const { stream, p } = closestStream(groups, chance);
  const slope = slopeOf(compared, compared.streams[stream]!);
  return slope ? { slope, p, stream } : none;
}

/** Findings from drafts: p-values adjusted for the items looked at, then in order of interest. */
export function findings(
  drafts: readonly Draft[],
  whose: Pick<Finding, "athlete" | "athletes" | "writtenAfter">,
): readonly Finding[] {
  const tested = drafts.filter(({ p }) => p !== null);
  const adjusted = certain(adjustedForMany(tested.map(({ p }) => p!)));
  const adjustedOf = new Map(tested.map((draft, at) => [draft, adjusted[at]!]));
  const found = drafts.map(
    (draft): Finding => ({
      ...whose,
      ...findingOf(draft, adjustedOf.get(draft) ?? null),
      itemsLookedAt: tested.length,
    }),
  );
  return found.sort((a, b) => (a.p ?? 2) - (b.p ?? 2));
}

/** What one item's draft says, once its p-value is held against those of all items. */
function findingOf(
  { days, slope, p, stream }: Draft,
  adjustedP: number | null,
): Omit<Finding, "athlete" | "athletes" | "writtenAfter" | "itemsLookedAt"> {
  const { kind, key, step, unit } = days.item;
  const half = slope ? step * slope.error * studentLimit(95, slope.freedom) : 0;
  const difference = slope ? step * slope.perUnit : null;
  // Of an amount whose low side matters, having it means less of it.
  const withIs = slope ? slope.perUnit * (days.side === "under" ? -1 : 1) : -1;
  const oddIs = withIs > 0 ? "good" : "slow";
  const counts = days.count(oddIs, stream);
  // A link that may as well be none or go the other way is none to name, however seldom chance deals it.
  const named = slope !== null && Math.abs(difference!) > half;
  return {
    item: key,
    kind,
    unit,
    step,
    word: wordOf(days.verdict, adjustedP, named),
    // A value may be missing on some of the days: then it says nothing about those.
    days: slope ? counts.oddDays + counts.otherDays : days.compared.days.length,
    daysWith: days.daysWith,
    border: days.border,
    side: days.side,
    value: days.compared.streams[stream]!.value,
    difference,
    low: difference === null ? null : difference - half,
    high: difference === null ? null : difference + half,
    p,
    adjustedP,
    oddIs,
    ...counts,
  };
}

function wordOf(
  verdict: ItemDays["verdict"],
  adjustedP: number | null,
  named: boolean,
): Finding["word"] {
  if (adjustedP !== null) return adjustedP <= linkLimit && named ? "goes together" : "no link seen";
  return verdict === "compare" ? "always the same" : verdict;
}
