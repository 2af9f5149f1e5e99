import { usualWeeks, type Weeks } from "./squad";
import { usualWorld, type World } from "./world";

/** A world in which something that the measure takes for granted does not hold. */
export type BrokenWorld = {
  readonly name: string;
  readonly world: World;
  readonly weeks: Weeks;
};

function broken(name: string, change: Partial<World>, weeks: Partial<Weeks> = {}): BrokenWorld {
  return { name, world: { ...usualWorld, ...change }, weeks: { ...usualWeeks, ...weeks } };
}

const errors = (factor: number): [number, number, number] => [
  4.5 * factor,
  4 * factor,
  4.5 * factor,
];

export const brokenWorlds: readonly BrokenWorld[] = [
  broken("one session a week", {}, { aWeek: [1, 1] }),
  broken("two sessions a week", {}, { aWeek: [2, 2] }),
  broken("noise with heavier tails (t, 3 degrees)", { tails: 3 }),
  broken("one day in ten 8 % off", { offDays: { share: 0.1, size: -8 } }),
  broken("3 % of readings misread by −15 %", { misreadings: { share: 0.03, size: -15 } }),
  broken("typical errors a third smaller", { typicalError: errors(2 / 3) }),
  broken("typical errors a third larger", { typicalError: errors(4 / 3) }),
  broken("measures independent", { correlation: 0 }),
  broken("measures correlated by .7", { correlation: 0.7 }),
  broken("squad of five", { athletes: 5 }),
  broken("jump on a 2 cm stack", { stackStepCm: 2 }),
  broken("bar speed only", { present: [0.95, 0, 0] }),
  broken("bar speed and one jump", { present: [0.95, 0.85, 0] }),
  broken("last season in the rows too", { pastSeason: true }),
  broken("marker sets", { markers: true }),
  broken("bar climbs by 20 %", { climb: 0.2 }),
  broken("each session's error .2 of the last", { serial: 0.2 }),
  broken("each session's error .4 of the last", { serial: 0.4 }),
  broken("a fifth of the noise is the squad's day", { commonDay: 0.2 }),
  broken("squad of two", { athletes: 2 }),
  broken("squad of two, bar speed only", { athletes: 2, present: [0.95, 0, 0] }),
];
