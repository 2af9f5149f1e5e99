/**
 * Seasons with and without a true link between a diary item and performance: how often a link is
 * named that is not there, and how often one of a stated size is found. Seeded; run with
 * `npm run bench:diary`.
 */
import { seededChance } from "../../../src/coaching/diary/seeded-chance";
import { squadDiffered } from "../../../src/coaching/diary/squad-differed";
import { itemsOfAthlete } from "../../../src/coaching/diary/what-differed";
import { chance } from "../seasons/chance";
import { athleteSeason, linksNamed, type World } from "./world";

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
  const { falseSeasons, found } = linksNamed(world, seasons, 9100 + at);
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
