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
