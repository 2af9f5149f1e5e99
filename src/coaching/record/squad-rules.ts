/** One setting a squad may change in its Rules table. */
export type RuleDefinition = {
  /** Words in the rule column, also the label on screen. */
  readonly label: string;
  readonly unit: string;
  readonly usual: number;
  readonly least: number;
  readonly most: number;
};

/** The settings, with the values used when a squad sets nothing; their sources are in `rule-sources.ts`. */
export const ruleDefinitions = {
  falseFlagRate: {
    label: "False flags, share of calm seasons",
    unit: "fraction",
    usual: 0.1,
    least: 0.02,
    most: 0.33,
  },
  velocityLossCap: {
    label: "Velocity loss cap",
    unit: "fraction",
    usual: 0.2,
    least: 0.05,
    most: 0.5,
  },
  loadDrop: {
    label: "Load off on a slow day",
    unit: "fraction",
    usual: 0.1,
    least: 0,
    most: 0.3,
  },
  minimumSpeed: {
    label: "Minimum speed for the strength estimate",
    unit: "m/s",
    usual: 0.3,
    least: 0.1,
    most: 0.6,
  },
  seasonWeeks: {
    label: "Weeks of the season",
    unit: "weeks",
    usual: 18,
    least: 4,
    most: 52,
  },
  baselineSessions: {
    label: "Sessions in the baseline",
    unit: "sessions",
    usual: 6,
    least: 4,
    most: 8,
  },
  hoursBeforeA: {
    label: "No heavy work before an A race",
    unit: "h",
    usual: 72,
    least: 0,
    most: 240,
  },
  hoursBeforeOthers: {
    label: "No heavy work before B and C races",
    unit: "h",
    usual: 48,
    least: 0,
    most: 240,
  },
  hoursAfterTen: {
    label: "No heavy work after a race up to 10 km",
    unit: "h",
    usual: 48,
    least: 0,
    most: 240,
  },
  hoursAfterHalf: {
    label: "No heavy work after a half marathon",
    unit: "h",
    usual: 72,
    least: 0,
    most: 240,
  },
  hoursAfterMarathon: {
    label: "No heavy work or jumps after a marathon",
    unit: "h",
    usual: 168,
    least: 0,
    most: 480,
  },
  daysToUsualAfterMarathon: {
    label: "Usual loads again after a marathon",
    unit: "days",
    usual: 10,
    least: 7,
    most: 28,
  },
  raceWeekSets: {
    label: "Sets kept in the week of an A race",
    unit: "fraction",
    usual: 0.5,
    least: 0.2,
    most: 1,
  },
  hoursToKeyRun: {
    label: "Hours between lifting and a key run",
    unit: "h",
    usual: 6,
    least: 0,
    most: 48,
  },
  holdWeeks: {
    label: "Weeks at a step before the next",
    unit: "weeks",
    usual: 3,
    least: 1,
    most: 8,
  },
  firstHold: {
    label: "Weeks at the first 5×5",
    unit: "weeks",
    usual: 3,
    least: 1,
    most: 12,
  },
  stepBySession: {
    label: "Step every session, not by the week",
    unit: "1 for yes",
    usual: 0,
    least: 0,
    most: 1,
  },
  stepSize: {
    label: "Step up in load",
    unit: "fraction",
    usual: 0.025,
    least: 0,
    most: 0.1,
  },
  resetShare: {
    label: "New rotation begins at, share of the last load",
    unit: "fraction",
    usual: 0,
    least: 0,
    most: 1,
  },
  largestStep: {
    label: "Step, at most",
    unit: "fraction",
    usual: 0.05,
    least: 0,
    most: 0.1,
  },
  noviceStep: {
    label: "Step for novices, at most",
    unit: "fraction",
    usual: 0.1,
    least: 0,
    most: 0.1,
  },
  racks: {
    label: "Racks in the room",
    unit: "racks",
    usual: 3,
    least: 0,
    most: 20,
  },
  minutesASet: {
    label: "Minutes for a set at a rack",
    unit: "min",
    usual: 1.5,
    least: 0.5,
    most: 10,
  },
  minutesOfRoom: {
    label: "Minutes the racks are free",
    unit: "min",
    usual: 45,
    least: 5,
    most: 240,
  },
  plainPicture: {
    label: "Season picture: plain",
    unit: "1 for yes",
    usual: 0,
    least: 0,
    most: 1,
  },
} as const satisfies Readonly<Record<string, RuleDefinition>>;

export type RuleKey = keyof typeof ruleDefinitions;
export type SquadRules = Readonly<Record<RuleKey, number>>;

/** Every rule at its usual value. */
export const usualRules: SquadRules = Object.fromEntries(
  Object.entries(ruleDefinitions).map(([key, rule]) => [key, rule.usual]),
) as Record<RuleKey, number>;
