import { type Day, isoFromDay } from "../coaching/calendar/day";
import { type Finding, leastDays, leastWith } from "../coaching/diary/finding";
import type { SymptomDay } from "../coaching/diary/symptom-day";
import type { StoodOut, UnusualDay } from "../coaching/diary/unusual-day";
import { ownPercent } from "../coaching/hold/own-percent";
import { grouped } from "../coaching/series/grouped";
import { dayWords } from "./days";
import { countWords, percentWords, signedPercentWords, trimmed } from "./reasons-figures";
import { valueWords } from "./reasons-hold";

/** Shown wherever words of pain or illness are. */
export const symptomCaution =
  "Ask first. Bone pain, night pain, chest symptoms, dizziness or limping: stop, and see a doctor or physiotherapist. Not medical advice.";

const unitWords: Readonly<Record<Finding["unit"], string>> = {
  h: " h",
  points: "",
  load: "",
  yes: "",
};
const amount = (value: number, unit: Finding["unit"]) =>
  `${trimmed(value, unit === "load" ? 0 : 1)}${unitWords[unit]}`;

/** "an hour more sleep", "100 more load in the run the day before", "carbs in session". */
function stepWords({ item, unit, step }: Finding): string {
  if (unit === "yes") return `${item}, with against without`;
  if (unit === "h") return `an hour more ${item}`;
  return unit === "load" ? `${step} more load of the ${item}` : `a point more ${item}`;
}

/**
 * "sleep under 6.3 h", "soreness over 3.4", "carbs in session"; of several athletes each has a border
 * of its own, an SD from its mean.
 */
function hadWords({ item, kind, side, border, unit }: Finding): string {
  if (kind === "yes or no") return item;
  if (border === null) return `${item} well ${side} the athlete's own usual`;
  if (unit === "load") return `a load ${side} ${amount(border, unit)} of the ${item}`;
  return `${item} ${side} ${amount(border, unit)}`;
}

/** "7 of 8 slow days had sleep under 6.3 h, 3 of 24 other days". */
export function countsWords(finding: Finding): string {
  const { oddIs, oddDays, oddDaysWith, otherDays, otherDaysWith } = finding;
  if (oddDays === 0) {
    return `no ${oddIs} day among them, ${otherDaysWith} of ${countWords(otherDays, "day")} had ${hadWords(finding)}`;
  }
  return `${oddDaysWith} of ${countWords(oddDays, `${oddIs} day`)} had ${hadWords(finding)}, ${otherDaysWith} of ${countWords(otherDays, "other day")}`;
}

function intervalWords({ difference, low, high, value }: Finding): string {
  const what = value ? `${valueWords(value)} ` : "";
  const own = [low!, high!].map((one) => ownPercent(value?.kind, one)).sort((a, b) => a - b);
  const [from, to] = own.map(signedPercentWords);
  return `${what}${signedPercentWords(ownPercent(value?.kind, difference!))} (95 %: ${from} to ${to})`;
}

/** What the days say about one item, in a sentence or two; counts of days always. */
export function findingWords(finding: Finding): string {
  const { word, days, daysWith, itemsLookedAt, adjustedP, writtenAfter, item, athletes } = finding;
  const left =
    writtenAfter === 0
      ? ""
      : ` ${countWords(writtenAfter, "day")} written after the session left out.`;
  const who = athletes > 1 ? ` of ${athletes} athletes, each against their own level` : "";
  if (word === "always the same") {
    const never = finding.kind === "yes or no" && daysWith === 0;
    return never
      ? `${capital(item)} on none of ${countWords(days, "day")}: nothing to compare.${left}`
      : `The same on all ${countWords(days, "day")}: ${item} cannot tell them apart.${left}`;
  }
  if (word === "not enough days") {
    const why =
      days < leastDays
        ? `${countWords(days, "day")} of ${leastDays} needed`
        : `${countWords(daysWith, "day")} with and ${days - daysWith} without, of ${leastWith} needed each way`;
    return `Not enough days to say: ${why}.${left}`;
  }
  const counts = `${countsWords(finding)}.`;
  const looked = `${countWords(itemsLookedAt, "item")} looked at`;
  const tried = `the season's slow drift and the weekday taken out, ${looked}`;
  if (word === "goes together") {
    return `Goes together over ${countWords(days, "day")}${who}: ${stepWords(finding)}, ${intervalWords(finding)}; ${counts} Chance of seeing this without a link ${chanceWords(adjustedP!)} (${tried}). It does not say which way it works: ask.${left}`;
  }
  // An interval clear of zero beside "no link" would read as a contradiction.
  const close = finding.p! <= 0.05 || finding.low! > 0 || finding.high! < 0;
  if (close) {
    return `Not enough to call a link over ${countWords(days, "day")}${who}: ${stepWords(finding)}, ${intervalWords(finding)}; ${counts} Of ${looked} one comes this close by chance in ${percentWords(100 * Math.min(1, adjustedP!))} of seasons or so; the season's slow drift and the weekday are taken out.${left}`;
  }
  return `No link to be seen over ${countWords(days, "day")}${who}: ${stepWords(finding)}, ${intervalWords(finding)}; ${counts} ${capital(tried)}.${left}`;
}

/** Whether a finding is no link, and no interval of it lies clear of zero. */
export const isNoLink = ({ word, p, low, high, athletes }: Finding): boolean =>
  word === "no link seen" && athletes === 1 && p! > 0.05 && low! <= 0 && high! >= 0;

/** Findings without a link in one: "No link to be seen in 17 days: soreness, sleep; in 12 days: mood. …"; what was taken out is said once. */
export function noLinksWords(findings: readonly Finding[]): string {
  const byDays = grouped(findings, ({ days }) => days);
  const named = [...byDays].map(
    ([days, some]) => `in ${countWords(days, "day")}: ${some.map(({ item }) => item).join(", ")}`,
  );
  return `No link to be seen ${named.join("; ")}. The season's slow drift and the weekday taken out, ${countWords(findings[0]!.itemsLookedAt, "item")} looked at.`;
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

function chanceWords(p: number): string {
  return p < 0.001 ? "under 0.1 %" : percentWords(100 * p);
}

/** What to look at before any figure: "3 days with words of pain or illness: 12 May (sore) …". */
export function symptomWordsOf(days: readonly SymptomDay[]): string {
  const shown = days
    .slice(0, 3)
    .map(({ day, symptoms, private: hidden }) => {
      return `${dayWords(day)} (${hidden ? "private row" : symptoms.join(", ")})`;
    })
    .join(", ");
  const more = days.length > 3 ? " and earlier" : "";
  return `${countWords(days.length, "day")} with words of pain or illness: ${shown}${more}. ${symptomCaution}`;
}

/** "sleep 4.5 h, usual 7.6" */
function stoodOutWords({ item, unit, value, usual }: StoodOut): string {
  if (unit === "yes") return value > 0 ? item : `no ${item}`;
  if (unit === "load")
    return `load of the ${item} ${amount(value, unit)}, usual ${amount(usual, unit)}`;
  return `${item} ${amount(value, unit)}, usual ${amount(usual, unit)}`;
}

/** What stood out on an unusual day and the day before; words of pain or illness come first. */
export function unusualDayWords(one: UnusualDay): string {
  const parts = unusualDayParts(one);
  return parts.length > 0 ? parts.join("; ") : nothingStoodOut;
}

export const nothingStoodOut = "nothing recorded that stood out: ask";

/** The same part by part, for a list. */
export function unusualDayParts(one: UnusualDay): readonly string[] {
  const { written, stoodOut, race, privateRows, day } = one;
  const when = (said: Day) => (said === day ? "" : " (the day before)");
  const symptoms = written.flatMap(({ symptoms: found, day: said }) =>
    found.map((word) => `${word}${when(said)}`),
  );
  const order = [...stoodOut].sort((a, b) => Math.abs(b.spreads) - Math.abs(a.spreads));
  return [
    ...(symptoms.length > 0 ? [`Look first: ${symptoms.join(", ")}. ${symptomCaution}`] : []),
    ...order.map(stoodOutWords),
    ...(race ? [`${countWords(race.daysAgo, "day")} after ${race.race}`] : []),
    ...written.map(
      ({ kind, text, day: said }) => `${kind === "note" ? "note" : kind}${when(said)}: “${text}”`,
    ),
    ...(privateRows > 0 ? [`${countWords(privateRows, "private row")} not shown`] : []),
  ];
}

/** The value of an unusual day: "back squat speed −7 %", "contact time +9 %" for a longer one. */
export function unusualValueWords({
  value,
  valuePercent,
}: Pick<UnusualDay, "value" | "valuePercent">): string {
  return `${valueWords(value)} ${signedPercentWords(ownPercent(value.kind, valuePercent))}`;
}

/** A day as a cell that sorts: 2026-05-12. */
export const dayCell = isoFromDay;
