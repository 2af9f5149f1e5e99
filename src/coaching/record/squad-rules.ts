/** One setting a squad may change in its Rules table. */
export type RuleDefinition = {
  /** Words in the rule column, also the label on screen. */
  readonly label: string;
  readonly unit: string;
  readonly usual: number;
  readonly least: number;
  readonly most: number;
};

const rule = (
  label: string,
  unit: string,
  usual: number,
  [least, most]: readonly [number, number],
): RuleDefinition => ({ label, unit, usual, least, most });

/** The settings, with the values used when a squad sets nothing; their sources are in `rule-sources.ts`. */
export const ruleDefinitions = {
  falseFlagRate: rule("False flags, share of calm seasons", "fraction", 0.1, [0.02, 0.33]),
  velocityLossCap: rule("Velocity loss cap", "fraction", 0.2, [0.05, 0.5]),
  loadDrop: rule("Load off on a slow day", "fraction", 0.1, [0, 0.3]),
  minimumSpeed: rule("Minimum speed for the strength estimate", "m/s", 0.3, [0.1, 0.6]),
  seasonWeeks: rule("Weeks of the season", "weeks", 18, [4, 52]),
  baselineSessions: rule("Sessions in the baseline", "sessions", 6, [4, 8]),
  hoursBeforeA: rule("No heavy work before an A race", "h", 72, [0, 240]),
  hoursBeforeOthers: rule("No heavy work before B and C races", "h", 48, [0, 240]),
  hoursAfterTen: rule("No heavy work after a race up to 10 km", "h", 48, [0, 240]),
  hoursAfterHalf: rule("No heavy work after a half marathon", "h", 72, [0, 240]),
  hoursAfterMarathon: rule("No heavy work or jumps after a marathon", "h", 168, [0, 480]),
  daysToUsualAfterMarathon: rule("Usual loads again after a marathon", "days", 10, [7, 28]),
  raceWeekSets: rule("Sets kept in the week of an A race", "fraction", 0.5, [0.2, 1]),
  hoursToKeyRun: rule("Hours between lifting and a key run", "h", 6, [0, 48]),
  holdWeeks: rule("Weeks at a step before the next", "weeks", 3, [1, 8]),
  firstHold: rule("Weeks at the first 5×5", "weeks", 3, [1, 12]),
  stepBySession: rule("Step every session, not by the week", "1 for yes", 0, [0, 1]),
  stepSize: rule("Step up in load", "fraction", 0.025, [0, 0.1]),
  resetShare: rule("New rotation begins at, share of the last load", "fraction", 0, [0, 1]),
  largestStep: rule("Step, at most", "fraction", 0.05, [0, 0.1]),
  noviceStep: rule("Step for novices, at most", "fraction", 0.1, [0, 0.1]),
  racks: rule("Racks in the room", "racks", 3, [0, 20]),
  minutesASet: rule("Minutes for a set at a rack", "min", 1.5, [0.5, 10]),
  minutesOfRoom: rule("Minutes the racks are free", "min", 45, [5, 240]),
  plainPicture: rule("Season picture: plain", "1 for yes", 0, [0, 1]),
} as const;

export type RuleKey = keyof typeof ruleDefinitions;
export type SquadRules = Readonly<Record<RuleKey, number>>;

/** Every rule at its usual value. */
export const usualRules: SquadRules = Object.fromEntries(
  Object.entries(ruleDefinitions).map(([key, rule]) => [key, rule.usual]),
) as Record<RuleKey, number>;
