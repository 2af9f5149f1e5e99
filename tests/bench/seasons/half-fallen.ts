import { usualRules } from "../../../src/coaching/record/squad-rules";
import { brokenWorlds } from "./broken-worlds";
import { flagged, foundWithin } from "./flags";
import { calledBy, type Seasons, saidSeasons } from "./season-table";
import { calm, change, type Share } from "./squad";
import { percent, percents } from "./table-text";
import { usualWorld, type World } from "./world";

/** Half of each squad calm, the other half with a lasting fall of 5 %. */
function halfFallen({ athletes, baselineSessions }: World): readonly Share[] {
  const half = Math.floor(athletes / 2);
  return [calm(athletes - half), change(half, "step", -5, baselineSessions)];
}

/** Calm seasons flagged and falls found, at each rate of false flags that a coach may ask for. */
export function ratesTable(squads: number, seed: number): readonly (readonly string[])[] {
  return [20, 10, 5].map((oneIn, at) => {
    const rules = { ...usualRules, falseFlagRate: 1 / oneIn };
    const mix = halfFallen(usualWorld);
    const said = saidSeasons(usualWorld, mix, squads, seed + 1000 * at, { rules });
    return [`1 in ${oneIn}`, ...flaggedAndFound(said)];
  });
}

/** The same in every world where something that the measure takes for granted does not hold. */
export function brokenTable(squads: number, seed: number): readonly (readonly string[])[] {
  return brokenWorlds.map(({ name, world, weeks }, at) => {
    const count = Math.round((squads * usualWorld.athletes) / world.athletes);
    const said = saidSeasons(world, halfFallen(world), count, seed + 1000 * at, { weeks });
    return [name, ...flaggedAndFound(said)];
  });
}

function flaggedAndFound(said: Seasons): readonly string[] {
  const falls = calledBy(said("step", -5), "slipping");
  return [
    percent(flagged(calledBy(said("calm"), "slipping")), 1),
    percents([4, 6, 8].map((within) => foundWithin(falls, within))),
  ];
}
