/**
 * Seasons with and without a true link between a diary item and performance: how often a link is
 * named that is not there, and how often one of a stated size is found. Seeded; run with
 * `npm run bench:diary`.
 */
import { seededChance } from "../../../src/coaching/diary/seeded-chance";
import { squadDiffered } from "../../../src/coaching/diary/squad-differed";
import { itemsOfAthlete, whatDiffered } from "../../../src/coaching/diary/what-differed";
import { diaryDay, gymDay, run, seasonOf } from "../../coaching/diary/constructed";
import { type Chance, chance } from "../seasons/chance";

type World = {
  readonly sessions: number;
  /** Percent of performance lost on a bad night (1 in 5), 0 for none. */
  readonly effect: number;
  /** Percent that performance slides over the season; diary items slide with it. */
  readonly slide: number;
  /** Correlation of a session's performance, and of an item, with the one before. */
  readonly serial: number;
};

/** One athlete-season: speed and jump with SD 4 %, 85 % of diary days kept, nine items. */
function athleteSeason({ sessions, effect, slide, serial }: World, draw: Chance) {
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

function share(count: number, of: number): string {
  return `${((100 * count) / of).toFixed(1).padStart(5)} %`;
}

const seasons = Number(process.argv[2] ?? 600);
const out: string[] = [
  `${seasons} athlete-seasons a row; nine items each; speed and jump, SD 4 %; one night in five is bad and costs speed only`,
  "",
  "world                                        seasons with a false link   true link found",
];
const worlds: readonly (readonly [string, World])[] = [
  ["18 sessions, no link", { sessions: 18, effect: 0, slide: 0, serial: 0 }],
  ["36 sessions, no link", { sessions: 36, effect: 0, slide: 0, serial: 0 }],
  ["36 sessions, both slide by 12 %", { sessions: 36, effect: 0, slide: 12, serial: 0 }],
  ["36 sessions, serial correlation .3", { sessions: 36, effect: 0, slide: 0, serial: 0.3 }],
  ["36 sessions, bad nights cost 3 %", { sessions: 36, effect: 3, slide: 0, serial: 0 }],
  ["36 sessions, bad nights cost 5 %", { sessions: 36, effect: 5, slide: 0, serial: 0 }],
  ["36 sessions, bad nights cost 7 %", { sessions: 36, effect: 7, slide: 0, serial: 0 }],
  ["36 sessions, 7 %, sliding by 12 %", { sessions: 36, effect: 7, slide: 12, serial: 0 }],
];
for (const [at, [name, world]] of worlds.entries()) {
  const draw = chance(9100 + at);
  let falseSeasons = 0;
  let found = 0;
  for (let season = 0; season < seasons; season++) {
    const rows = athleteSeason(world, draw);
    const items = itemsOfAthlete({ athlete: "", ...rows, starts: new Map() });
    const links = whatDiffered(items, seededChance(`${at} ${season}`)).filter(
      ({ word }) => word === "goes together",
    );
    const isTrue = ({ item }: { item: string }) => world.effect > 0 && item === "sleep";
    if (links.some((link) => !isTrue(link))) falseSeasons++;
    if (links.some(isTrue)) found++;
  }
  out.push(
    `${name.padEnd(44)} ${share(falseSeasons, seasons).padEnd(27)} ${world.effect > 0 ? share(found, seasons) : "–"}`,
  );
}
out.push(
  "",
  "ten athletes together                        squads with a false link    true link found",
);
for (const [at, effect] of [0, 2, 3].entries()) {
  const draw = chance(9200 + at);
  const squads = Math.max(1, Math.round(seasons / 6));
  let falseSquads = 0;
  let found = 0;
  for (let squad = 0; squad < squads; squad++) {
    const members = Array.from({ length: 10 }, (_, who) => {
      const rows = athleteSeason({ sessions: 36, effect, slide: 0, serial: 0 }, draw);
      return itemsOfAthlete({ athlete: `${who}`, ...rows, starts: new Map() });
    });
    const links = squadDiffered(members, seededChance(`squad ${at} ${squad}`)).filter(
      ({ word }) => word === "goes together",
    );
    if (links.some(({ item }) => effect === 0 || item !== "sleep")) falseSquads++;
    if (effect > 0 && links.some(({ item }) => item === "sleep")) found++;
  }
  const name = effect === 0 ? "36 sessions, no link" : `36 sessions, bad nights cost ${effect} %`;
  out.push(
    `${name.padEnd(44)} ${share(falseSquads, squads).padEnd(27)} ${effect > 0 ? share(found, squads) : "–"}`,
  );
}
process.stdout.write(`${out.join("\n")}\n`);
