import type { Readiness, ReadinessPart } from "../coaching/readiness/readiness";
import { standsOut } from "../coaching/readiness/stands-out";
import { dayWords } from "./days";
import { countWords, percentWords, trimmed, withinSentence } from "./reasons-figures";

function partName({ part, of }: Pick<ReadinessPart, "part" | "of">): string {
  if (part === "speed") return `${withinSentence(of)} speed`;
  return part === "jump" ? withinSentence(of) : part;
}

/** "back squat speed 0.62 m/s, usual 0.68"; "sleep 5.5 h, usual 7.6". */
export function partWords(part: ReadinessPart): string {
  const { unit, today, usual } = part;
  const name = partName(part);
  if (unit === "m/s") {
    const change = 100 * (today / usual - 1);
    return `${name} ${percentWords(change)} ${change < 0 ? "slower" : "faster"} than usual at that load (${today.toFixed(2)} m/s, usual ${usual.toFixed(2)})`;
  }
  if (unit === "s") {
    return `${name}, contact ${Math.round(1000 * today)} ms, usual ${Math.round(1000 * usual)}`;
  }
  const units = unit === "points" ? "" : ` ${unit}`;
  return `${name} ${trimmed(today, 1)}${units}, usual ${trimmed(usual, 1)}`;
}

/** The day's word; `too few rows` says how many more of what. */
export function readinessWords({ word, day, needed }: Readiness): string {
  if (word !== "too few rows") return word;
  const least = [...needed].sort((a, b) => a.rows - b.rows)[0];
  if (!least) return `too few rows (no value recorded on ${dayWords(day)})`;
  return `too few rows (${countWords(least.rows, `more day of ${partName(least)}`, `more days of ${partName(least)}`)})`;
}

/**
 * Main reason of the day's word, or what a usual day rests on: a part that stands out alone is never
 * said to be within the usual.
 */
export function readinessReason(readiness: Readiness): string {
  const { word, reason, parts, size } = readiness;
  if (word === "too few rows" || size === null) return readinessWords(readiness);
  if (reason) return `${partWords(reason)}, ${countWords(reason.pastRows, "earlier day")}`;
  const alone = parts.filter(standsOut);
  const others = parts.filter((one) => !standsOut(one)).map(partName);
  const within = `${others.join(", ") || "all together"} within the usual`;
  return alone.length === 0
    ? within
    : `${within}; standing out: ${alone.map(partWords).join("; ")}`;
}
