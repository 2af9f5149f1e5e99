/** One setting a squad may change in its Rules table. */
export type RuleDefinition = {
  /** Words in the rule column, also the label on screen. */
  readonly label: string;
  readonly unit: string;
  readonly usual: number;
  readonly least: number;
  readonly most: number;
  /** Where the usual value comes from. */
  readonly source: string;
};

/** The settings, with the values used when a squad sets nothing. */
export const ruleDefinitions = {
  falseFlagRate: {
    label: "False flags, share of calm seasons",
    unit: "fraction",
    usual: 0.1,
    least: 0.02,
    most: 0.33,
    source: "coach's choice; 1 in 10 is our default",
  },
  velocityLossCap: {
    label: "Velocity loss cap",
    unit: "fraction",
    usual: 0.2,
    least: 0.05,
    most: 0.5,
    source: "low loss favoured: Hernández-Belmonte & Pallarés 2022, Appl Sci 12(9):4425",
  },
  loadDrop: {
    label: "Load off on a slow day",
    unit: "fraction",
    usual: 0.1,
    least: 0,
    most: 0.3,
    source: "common practice, no source",
  },
  minimumSpeed: {
    label: "Minimum speed for the strength estimate",
    unit: "m/s",
    usual: 0.3,
    least: 0.1,
    most: 0.6,
    source: "squat .32 ± .03, Sánchez-Medina et al. 2017; .29 ± .05, Conceição et al. 2016",
  },
  seasonWeeks: {
    label: "Weeks of the season",
    unit: "weeks",
    usual: 18,
    least: 4,
    most: 52,
    source: "common practice, no source: racing seasons of 16 to 20 weeks",
  },
  baselineSessions: {
    label: "Sessions in the baseline",
    unit: "sessions",
    usual: 6,
    least: 4,
    most: 8,
    source: "simulated seasons: calm ones are flagged as often as chosen with 4 to 8",
  },
  hoursBeforeA: {
    label: "No heavy work before an A race",
    unit: "h",
    usual: 72,
    least: 0,
    most: 240,
    source: "common practice, no source",
  },
  hoursBeforeOthers: {
    label: "No heavy work before B and C races",
    unit: "h",
    usual: 48,
    least: 0,
    most: 240,
    source: "common practice, no source",
  },
  hoursAfterTen: {
    label: "No heavy work after a race up to 10 km",
    unit: "h",
    usual: 48,
    least: 0,
    most: 240,
    source: "common practice, no source",
  },
  hoursAfterHalf: {
    label: "No heavy work after a half marathon",
    unit: "h",
    usual: 72,
    least: 0,
    most: 240,
    source: "common practice, no source: 72 to 96 h",
  },
  hoursAfterMarathon: {
    label: "No heavy work or jumps after a marathon",
    unit: "h",
    usual: 168,
    least: 0,
    most: 480,
    source: "common practice; jump power was still down 12 % at five days, Petersen et al. 2007",
  },
  daysToUsualAfterMarathon: {
    label: "Usual loads again after a marathon",
    unit: "days",
    usual: 10,
    least: 7,
    most: 28,
    source: "common practice, no source: 10 to 14 days",
  },
  raceWeekSets: {
    label: "Sets kept in the week of an A race",
    unit: "fraction",
    usual: 0.5,
    least: 0.2,
    most: 1,
    source: "volume cut by 41–60 % with load kept: Bosquet et al. 2007, Med Sci Sports Exerc 39(8)",
  },
  hoursToKeyRun: {
    label: "Hours between lifting and a key run",
    unit: "h",
    usual: 6,
    least: 0,
    most: 48,
    source:
      "strength suffers little at 6 h (Robineau et al. 2016); running may suffer the next day (Doma & Deakin 2013)",
  },
  holdWeeks: {
    label: "Weeks at a step before the next",
    unit: "weeks",
    usual: 3,
    least: 1,
    most: 8,
    source: "common practice, no source",
  },
  firstHold: {
    label: "Weeks at the first 5×5",
    unit: "weeks",
    usual: 3,
    least: 1,
    most: 12,
    source: "common practice, no source",
  },
  stepBySession: {
    label: "Step every session, not by the week",
    unit: "1 for yes",
    usual: 0,
    least: 0,
    most: 1,
    source: "coach's choice",
  },
  stepSize: {
    label: "Step up in load",
    unit: "fraction",
    usual: 0.025,
    least: 0,
    most: 0.1,
    source: "common practice 5–10 %, small steps while racing; one plate step at least, 0 for none",
  },
  resetShare: {
    label: "New rotation begins at, share of the last load",
    unit: "fraction",
    usual: 0,
    least: 0,
    most: 1,
    source: "coach's choice; 0 begins where the whole turn keeps two repetitions in reserve",
  },
  largestStep: {
    label: "Step, at most",
    unit: "fraction",
    usual: 0.05,
    least: 0,
    most: 0.1,
    source:
      "load raised 2–10 %: ACSM position stand 2009; small steps while racing, common practice",
  },
  noviceStep: {
    label: "Step for novices, at most",
    unit: "fraction",
    usual: 0.1,
    least: 0,
    most: 0.1,
    source:
      "load raised 2–10 %: ACSM position stand 2009; on a light bar one plate step is 5 % and more",
  },
  racks: {
    label: "Racks in the room",
    unit: "racks",
    usual: 3,
    least: 0,
    most: 20,
    source: "the coach's own room; 0 for a room without racks",
  },
  minutesASet: {
    label: "Minutes for a set at a rack",
    unit: "min",
    usual: 1.5,
    least: 0.5,
    most: 10,
    source: "common practice, no source: one lifts while the others at the bar rest",
  },
  minutesOfRoom: {
    label: "Minutes the racks are free",
    unit: "min",
    usual: 45,
    least: 5,
    most: 240,
    source: "the coach's own room",
  },
  plainPicture: {
    label: "Season picture: plain",
    unit: "1 for yes",
    usual: 0,
    least: 0,
    most: 1,
    source: "our choice: 1 for fonts without dot signs",
  },
} as const satisfies Readonly<Record<string, RuleDefinition>>;

export type RuleKey = keyof typeof ruleDefinitions;
export type SquadRules = Readonly<Record<RuleKey, number>>;

/** Every rule at its usual value. */
export const usualRules: SquadRules = Object.fromEntries(
  Object.entries(ruleDefinitions).map(([key, rule]) => [key, rule.usual]),
) as Record<RuleKey, number>;
