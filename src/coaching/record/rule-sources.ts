import type { RuleKey } from "./squad-rules";

/** Where each rule's usual value comes from; beside the rules, as no formula needs it. */
export const ruleSources: Readonly<Record<RuleKey, string>> = {
  falseFlagRate: "coach's choice; 1 in 10 is our default",
  velocityLossCap: "low loss favoured: Hernández-Belmonte & Pallarés 2022, Appl Sci 12(9):4425",
  loadDrop: "common practice, no source",
  minimumSpeed: "squat .32 ± .03, Sánchez-Medina et al. 2017; .29 ± .05, Conceição et al. 2016",
  seasonWeeks: "common practice, no source: racing seasons of 16 to 20 weeks",
  baselineSessions: "simulated seasons: calm ones are flagged as often as chosen with 4 to 8",
  hoursBeforeA: "common practice, no source",
  hoursBeforeOthers: "common practice, no source",
  hoursAfterTen: "common practice, no source",
  hoursAfterHalf: "common practice, no source: 72 to 96 h",
  hoursAfterMarathon:
    "common practice; jump power was still down 12 % at five days, Petersen et al. 2007",
  daysToUsualAfterMarathon: "common practice, no source: 10 to 14 days",
  raceWeekSets:
    "volume cut by 41–60 % with load kept: Bosquet et al. 2007, Med Sci Sports Exerc 39(8)",
  hoursToKeyRun:
    "strength suffers little at 6 h (Robineau et al. 2016); running may suffer the next day (Doma & Deakin 2013)",
  holdWeeks: "common practice, no source",
  firstHold: "common practice, no source",
  stepBySession: "coach's choice",
  stepSize: "common practice 5–10 %, small steps while racing; one plate step at least, 0 for none",
  resetShare: "coach's choice; 0 begins where the whole turn keeps two repetitions in reserve",
  largestStep:
    "load raised 2–10 %: ACSM position stand 2009; small steps while racing, common practice",
  noviceStep:
    "load raised 2–10 %: ACSM position stand 2009; on a light bar one plate step is 5 % and more",
  racks: "the coach's own room; 0 for a room without racks",
  minutesASet: "common practice, no source: one lifts while the others at the bar rest",
  minutesOfRoom: "the coach's own room",
  plainPicture: "our choice: 1 for fonts without dot signs",
};
