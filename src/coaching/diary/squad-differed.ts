import type { DiaryItem } from "./diary-item";
import type { Finding } from "./finding";
import type { ItemDays } from "./item-days";
import { type ComparedDays, slopeOf } from "./link";
import { permutationP } from "./permutation";
import { type Draft, findings, type ItemsOfAthlete } from "./what-differed";

/**
 * The same for several athletes together. Every value is first taken against its own athlete's level,
 * and performances are dealt out within athletes only, so that an athlete who sleeps long and lifts
 * fast makes no link.
 *
 * @returns findings with an empty name; an item counts where at least two athletes have enough days
 */
export function squadDiffered(
  squad: readonly ItemsOfAthlete[],
  chance: () => number,
): readonly Finding[] {
  const keys = [...new Set(squad.flatMap(({ items }) => items.map(({ item }) => item.key)))];
  const used = new Set<string>();
  const drafts = keys.flatMap((key): readonly Draft[] => {
    const own = squad.flatMap(({ athlete, items }) => {
      const days = items.find(({ item }) => item.key === key);
      return days && days.verdict === "compare" ? [{ athlete, days }] : [];
    });
    if (own.length < 2) return [];
    for (const { athlete } of own) used.add(athlete);
    const pooled = together(own.map(({ days }) => days));
    const slope = slopeOf(pooled.compared);
    const groups = own.map(({ days }) => days.compared);
    return [{ days: pooled, slope, p: slope ? permutationP(groups, chance) : null }];
  });
  const writtenAfter = squad.reduce((sum, one) => sum + one.writtenAfter, 0);
  return findings(drafts, { athlete: "", athletes: used.size, writtenAfter });
}

/** Days of several athletes end to end, counts added; each keeps its own border. */
function together(own: readonly ItemDays[]): ItemDays {
  const compared: ComparedDays = {
    days: own.flatMap(({ compared: { days } }) => days),
    item: own.flatMap(({ compared: { item } }) => item),
    itemCentred: own.flatMap(({ compared: { itemCentred } }) => itemCentred),
    itemBeyond: own.flatMap(({ compared: { itemBeyond } }) => itemBeyond),
    percentBeyond: own.flatMap(({ compared: { percentBeyond } }) => percentBeyond),
    strata: own.flatMap(({ compared: { strata } }) => strata),
  };
  const item: DiaryItem = own[0]!.item;
  return {
    item,
    compared,
    verdict: "compare",
    border: null,
    side: own[0]!.side,
    daysWith: own.reduce((sum, { daysWith }) => sum + daysWith, 0),
    count: (odd) => {
      const counts = own.map(({ count }) => count(odd));
      const total = (of: keyof (typeof counts)[number]) =>
        counts.reduce((sum, one) => sum + one[of], 0);
      return {
        oddDays: total("oddDays"),
        oddDaysWith: total("oddDaysWith"),
        otherDays: total("otherDays"),
        otherDaysWith: total("otherDaysWith"),
      };
    },
  };
}
