import { squadReadiness } from "../../../src/coaching/readiness/squad-readiness";
import { readinessWords } from "../../../src/words/reasons-readiness";
import { share } from "./flags";
import { all, type Share, simulateSquad } from "./squad";
import type { World } from "./world";

/** Days behind the one judged. */
const past = 10;
const veryBad = -8;

/** Shares of days called below or well below usual. */
export type ReadinessDays = {
  readonly anyDay: number;
  /** Without the days that were truly off. */
  readonly ordinary: number;
  /** Days 8 % off in every measure and one and a half SD in the diary. */
  readonly veryBad: number;
};

/** Judges the eleventh day of every athlete, for half of them a very bad one. */
export function readinessDays(world: World, squads: number, seed: number): ReadinessDays {
  const anyDay: boolean[] = [];
  const ordinary: boolean[] = [];
  const bad: boolean[] = [];
  for (let squad = 0; squad < squads; squad++) {
    const simulated = simulateSquad(
      world,
      [days(world.athletes / 2), days(world.athletes / 2, veryBad)],
      seed + squad,
      { weeks: [8, 8], aWeek: [2, 2] },
      true,
    );
    for (const { name, sessions, truth } of simulated.athletes) {
      const session = sessions[past];
      if (!session) continue;
      const index = simulated.upTo(session.day);
      const words = readinessWords(squadReadiness({ index, plates: [] })(name));
      const below = words.includes("below usual");
      if (truth.badDay) bad.push(below);
      else {
        anyDay.push(below);
        if (session.dayOff === 0) ordinary.push(below);
      }
    }
  }
  return { anyDay: share(anyDay), ordinary: share(ordinary), veryBad: share(bad) };
}

function days(count: number, size?: number): Share {
  return {
    count,
    truth: () => ({
      kind: "calm",
      size: 0,
      onset: 0,
      measures: all,
      ...(size === undefined ? {} : { badDay: { at: past, size } }),
    }),
  };
}
