import type { DiaryItem } from "./diary-item";
import type { Finding } from "./finding";
import type { ItemDays } from "./item-days";
import type { ComparedDays } from "./link";
import { closeness, type Draft, findings, type ItemsOfAthlete } from "./what-differed";

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
    const groups = own.map(({ days }) => togetherOnly(days.compared));
    return [{ days: pooled, ...closeness(pooled, groups, chance) }];
  });
  const writtenAfter = squad.reduce((sum, one) => sum + one.writtenAfter, 0);
  return findings(drafts, { athlete: "", athletes: used.size, writtenAfter });
}

/** Athletes are followed by different values: only the mean of each day is pooled. */
function togetherOnly(compared: ComparedDays): ComparedDays {
  return { ...compared, streams: compared.streams.slice(0, 1) };
}

/** Days of several athletes end to end, counts added; each keeps its own border. */
function together(own: readonly ItemDays[]): ItemDays {
  const compared: ComparedDays = {
    days: own.flatMap(({ compared: { days } }) => days),
    item: own.flatMap(({ compared: { item } }) => item),
    itemCentred: own.flatMap(({ compared: { itemCentred } }) => itemCentred),
    itemBeyond: own.flatMap(({ compared: { itemBeyond } }) => itemBeyond),
    streams: [
      {
        value: null,
        beyond: own.flatMap(({ compared: { streams } }) => streams[0]!.beyond),
        sizes: own.flatMap(({ compared: { streams } }) => streams[0]!.sizes),
      },
    ],
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
      const counts = own.map(({ count }) => count(odd, 0));
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
