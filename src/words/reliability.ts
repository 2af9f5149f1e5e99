/** What RELIABILITY names its figures, each with the letters statisticians know it by. */
export const reliabilityLabels = {
  athletes: "athletes",
  trials: "trials",
  meanChange: "mean change, first trial to last",
  typicalError: "typical error",
  detectableChange: "smallest detectable change",
  percentError: "typical error (%)",
  consistency: "intraclass correlation, trials fixed: ICC(3,1)",
  agreement: "intraclass correlation, trials a sample: ICC(2,1)",
  oneWay: "intraclass correlation, trials in no order: ICC(1,1)",
  consistencyMean: "of the mean of all trials: ICC(3,k)",
  agreementMean: "of the mean of all trials: ICC(2,k)",
  oneWayMean: "of the mean of all trials: ICC(1,k)",
} as const;

/** In place of a percent that cannot be given. */
export const noPercent = "–: a value is not above 0";

/** How a cell of a range of trials is named where it cannot be read. */
export const trialCell = (trial: number, row: number): string => `Trial ${trial} in row ${row}`;
/** The same of two devices' columns. */
export const deviceCell = (name: string, row: number): string => `${name}, row ${row},`;
