import { leftUsualOnce, type SetToSet } from "../coaching/bar-speed/set-to-set";
import { dayWords } from "./days";
import { countWords, signedPercentWords } from "./reasons-figures";

/** The same of a day named before it: "25 Jun: as usual: last set −5 % against the first". */
export function daysSetsWords(result: SetToSet): string {
  return `${dayWords(result.day)}: ${saidOf(result, "")}`;
}

/**
 * "left the usual at set 4: −12 % against the first, usual −3 % (−9 to +2 %)", or that it did not.
 */
export function setToSetWords(result: SetToSet): string {
  return saidOf(result, ` on ${dayWords(result.day)}`);
}

function saidOf(result: SetToSet, onDay: string): string {
  const { word, leftUsualAtSet, sets, usualSessions, notCompared } = result;
  const aside =
    notCompared === 0
      ? ""
      : `; ${countWords(notCompared, "set")} at another load or setting not compared`;
  const left = sets.find(({ set }) => set === leftUsualAtSet);
  if (left && left.usual !== null) {
    const low = signedPercentWords(100 * left.usualLow!);
    const high = signedPercentWords(100 * left.usualHigh!);
    return `${word} ${leftUsualOnce(result) ? "only in" : "from"} set ${left.set}: ${signedPercentWords(100 * left.change)} against the first, usual ${signedPercentWords(100 * left.usual)} (${low} to ${high})${aside}`;
  }
  if (word === "too few rows") {
    const more = Math.max(1, 4 - usualSessions);
    return `too few rows (${countWords(more, "more earlier session")} of as many sets)${aside}`;
  }
  return `as usual: last set ${signedPercentWords(100 * result.lastVsFirst)} against the first${onDay}${aside}`;
}
