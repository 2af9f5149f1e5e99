import type { NextBlock, NextBlockReason } from "../coaching/blocks/next-block";
import { chartReps } from "../coaching/blocks/repetition-load";
import { repetitionsWords } from "./reasons-figures";

const sentences: Readonly<Record<NextBlockReason, string>> = {
  "quality-not-recorded": "movement quality not recorded: held",
  "moved-poorly": "movement first: held until it is clean",
  "volume-not-recorded": "volume not recorded: held",
  "volume-missed": "volume missed: the step is repeated",
  "speed-not-recorded": "speed not recorded: held",
  "speed-lost": "speed not held: the step is repeated",
  "step-up": "moved well, volume done, speed held: one step on",
  "step-too-coarse": "one step on at the same load: one plate step would be more than 10 %",
  "reserve-short": "load kept down so that two repetitions stay in reserve",
  reset: "the rotation begins again with room for its later steps",
};

/** Why the next block is what it is. */
export function nextBlockWords({ reason, reserve }: NextBlock): string {
  const left =
    reserve === null
      ? "no strength estimate to guard it"
      : reserve > chartReps
        ? "more than ten repetitions in reserve"
        : `about ${repetitionsWords(reserve)} in reserve`;
  return `${sentences[reason]} (${left})`;
}
