import { seededChance } from "../../../src/coaching/diary/seeded-chance";
import { itemsOfAthlete, whatDiffered } from "../../../src/coaching/diary/what-differed";
import { diaryDay, gymDay, run, seasonOf } from "../../coaching/diary/constructed";
import { type Chance, chance } from "../seasons/chance";

export type World = {
  readonly sessions: number;
  /** Percent of performance lost on a bad night (1 in 5), 0 for none. */
  readonly effect: number;
  /** Percent that performance slides over the season; diary items slide with it. */
  readonly slide: number;
  /** Correlation of a session's performance, and of an item, with the one before. */
  readonly serial: number;
};

/** One athlete-season: speed and jump with SD 4 %, 85 % of diary days kept, nine items. */
export function athleteSeason({ sessions, effect, slide, serial }: World, draw: Chance) {
  const series = () => {
    let last = draw.normal();
    return Array.from({ length: sessions }, () => {
      last = serial * last + Math.sqrt(1 - serial ** 2) * draw.normal();
      return last;
    });
  };
  const drift = (s: number) => s / (sessions - 1) - 0.5;
  const bad = Array.from({ length: sessions }, () => draw.uniform() < 0.2);
  const percents = series().map((wobble, s) =>
    draw.uniform() < 0.08 ? null : 4 * wobble - (bad[s] ? effect : 0) - slide * drift(s),
  );
  const [sleep, quality, soreness, fatigue, stress, mood] = Array.from({ length: 6 }, series);
  const points = (value: number, s: number) =>
    Math.min(5, Math.max(1, Math.round(3 + 0.9 * value + (slide / 8) * drift(s))));
  const diary = percents.flatMap((_, s) =>
    draw.uniform() < 0.15
      ? []
      : [
          diaryDay(gymDay(s), {
            sleepH: (bad[s] ? 5.4 : 7.4) + 0.4 * sleep![s]! - (slide / 8) * drift(s),
            sleepQuality: points(quality![s]!, s),
            soreness: points(soreness![s]!, s),
            fatigue: points(fatigue![s]!, s),
            stress: points(stress![s]!, s),
            mood: points(mood![s]!, s),
            carbsInSession: draw.uniform() < 0.4,
            newToday: draw.uniform() < 0.15 ? "something" : "",
          }),
        ],
  );
  const runs = percents.map((_, s) =>
    run(gymDay(s) - 1, 40 + 15 * draw.uniform(), draw.whole(2, 8)),
  );
  // A jump that the nights do not touch stands beside the speed.
  const jump = series().map((wobble, s) =>
    draw.uniform() < 0.3 ? null : 4 * wobble - slide * drift(s),
  );
  return { hold: seasonOf(percents, gymDay, jump), diary, runs };
}

/** Seasons of one world that name a link that is not there, and that find the one that is. */
export function linksNamed(world: World, seasons: number, seed: number) {
  const draw = chance(seed);
  let falseSeasons = 0;
  let found = 0;
  for (let season = 0; season < seasons; season++) {
    const rows = athleteSeason(world, draw);
    const items = itemsOfAthlete({ athlete: "", ...rows, starts: new Map() });
    const links = whatDiffered(items, seededChance(`${seed} ${season}`)).filter(
      ({ word }) => word === "goes together",
    );
    const isTrue = ({ item }: { item: string }) => world.effect > 0 && item === "sleep";
    if (links.some((link) => !isTrue(link))) falseSeasons++;
    if (links.some(isTrue)) found++;
  }
  return { falseSeasons, found };
}
