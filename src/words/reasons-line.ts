import type { AthleteLine } from "../coaching/bar-speed/squad-lines";
import { countWords, trimmed } from "./reasons-figures";

/** "14 sets on 6 days, 60 to 90 kg; 3 sets with another tool, bar or gym left out" */
export function lineReason(line: AthleteLine): string {
  const { setsUsed, daysUsed, lightestKg, heaviestKg, otherSettingSets } = line;
  const loads =
    lightestKg === heaviestKg
      ? `${trimmed(lightestKg, 2)} kg`
      : `${trimmed(lightestKg, 2)} to ${trimmed(heaviestKg, 2)} kg`;
  const others =
    otherSettingSets === 0
      ? ""
      : `; ${countWords(otherSettingSets, "set")} in another setting (tool, mean or peak, bar, gym) left out`;
  return `${countWords(setsUsed, "set")} on ${countWords(daysUsed, "day")}, ${loads}${others}`;
}
