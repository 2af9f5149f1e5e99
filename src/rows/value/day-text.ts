import { type Day, dayFromDate } from "../../coaching/calendar/day";
import { minuteOfDay } from "./minute-of-day";

/** A day as written, before the order of day and month and the year are settled. */
export type DayText = {
  /** First and second number of "12/5", or null when the month is named or the order is ISO. */
  readonly pair: readonly [number, number] | null;
  readonly month: number | null;
  readonly date: number | null;
  readonly year: number | null;
  /** 0 Monday … 6 Sunday, when a weekday stands beside the date. */
  readonly weekday: number | null;
  /** Dots between the numbers: day first, as German dates are written (DIN 5008, from memory). */
  readonly dotted: boolean;
  readonly minute: number | null;
};

/** The place, from 0, of every word of a list "mon monday|tue tuesday". */
const placesOf = (list: string): ReadonlyMap<string, number> =>
  new Map(
    list.split("|").flatMap((words, at) => words.split(" ").map((word) => [word, at] as const)),
  );

// English and German, then French, Spanish, Italian, Portuguese, Dutch and the Scandinavian languages; short
// forms that are words elsewhere, "set", "out", or names, "sam", are left out.
const months = placesOf(
  "jan january januar jän jänner janv janvier ene enero gennaio janeiro januari|feb february februar févr février fevrier febrero febbraio fevereiro februari|mar march märz mrz maerz mär mars marzo março maart mrt marts|apr april avr avril abr abril aprile|may mai mayo maggio maio mei maj|jun june juni juin junio giugno junho|jul july juli juil juillet julio luglio julho|aug august août aout agosto augustus augusti|sep sept september septembre septiembre settembre setembro|oct october okt oktober octobre octubre ottobre outubro|nov november novembre noviembre novembro|dec december dez dezember déc décembre decembre diciembre dicembre dezembro desember",
);
const weekdays = placesOf(
  "mon monday mo montag lun lundi lunes lunedì ma maandag måndag mandag|tue tues tuesday di dienstag tu mardi martes martedì dinsdag tisdag tirsdag|wed weds wednesday mi mittwoch we mer mercredi miércoles mié mercoledì wo woensdag ons onsdag|thu thur thurs thursday do donnerstag th jeu jeudi jueves jue giovedì donderdag tors torsdag|fri friday fr freitag ven vendredi viernes vie venerdì vr vrijdag fre fredag|sat saturday sa samstag samedi sábado sáb sabato za zaterdag lör lördag lørdag|sun sunday so sonntag su dim dimanche domingo domenica zo zondag sön söndag søndag",
);

/** The weekday a word names, 0 Monday; null when it names none. */
export function weekdayOfWord(word: string): number | null {
  return weekdays.get(word.toLowerCase().replace(/\.$/, "")) ?? null;
}

const iso = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/;
const numeric = /^(\d{1,2})([/.-])(\d{1,2})(?:\2(\d{4}|\d{2})?)?$/;

/** The stroke of "17 May '26"; "May '26" names no day, and "45'30" is a time. */
const centuryLeftOut = /(?<=\d\D*[\s/.-])['’](?=\d\d(?!\d))/;

const noon = 720;
const besideDays =
  /^(?:[–—-]|[ap]\.?m\.?|of|the|um|le|de|del|den|el|il|(?:gmt|utc)(?:[+-]\d{1,2}(?::\d{2})?)?)$/i;

/** Reads text as a day; null when it is not one. "pm", "am" and a time of day may stand beside it. */
export function dayFromText(text: string): DayText | null {
  if (!/\d/.test(text)) return null;
  let minute: number | null = null;
  let weekday: number | null = null;
  let left = text.trim();
  if (left.length > 40) return null;
  left = left.replace(centuryLeftOut, "");
  const isoTime =
    /^(\d{4}-\d{2}-\d{2})[T ](\d{2}:\d{2})(?::\d{2}(?:\.\d+)?)?(?:Z|[+-]\d{2}:?\d{2})?$/.exec(left);
  if (isoTime) {
    left = isoTime[1]!;
    minute = minuteOfDay(isoTime[2]);
  }
  const words: string[] = [];
  const pieces = left.split(/[\s,]+/);
  for (const [at, word] of pieces.entries()) {
    if (/^p\.?m\.?$/i.test(word) && minute !== null && minute < noon) minute += noon;
    if (isMidnight(pieces, at)) minute = minute === null ? null : minute % noon;
    if (word === "" || besideDays.test(word)) continue;
    const named = weekdayOfWord(word);
    if (named !== null && weekday === null) weekday = named;
    else if (minute === null && /[:h]/i.test(word) && minuteOfDay(word) !== null)
      minute = minuteOfDay(word);
    else words.push(word);
  }
  const rest = { weekday, minute };
  const joined = words.join(" ");
  const isoParts = iso.exec(joined);
  if (isoParts) {
    const [, year, month, date] = isoParts.map(Number);
    return { pair: null, year: year!, month: month!, date: date!, dotted: false, ...rest };
  }
  const pair = numeric.exec(joined);
  // "2-3" is a range and "1.08" a number sooner than a date: dashes need the year, dots their second dot.
  const settled =
    pair !== null && (pair[2] === "/" || pair[4] !== undefined || joined.endsWith("."));
  if (settled) {
    const year = pair[4] === undefined ? null : Number(pair[4]) + (pair[4].length === 2 ? 2000 : 0);
    return {
      pair: [Number(pair[1]), Number(pair[3])],
      month: null,
      date: null,
      year,
      dotted: pair[2] === ".",
      ...rest,
    };
  }
  return namedMonth(joined, rest);
}

/** "12:10 am" is ten past midnight; before "6. April" the word is German, "on", and moves no time. */
function isMidnight(pieces: readonly string[], at: number): boolean {
  if (!/^a\.?m\.?$/i.test(pieces[at]!) || !/^12\D/.test(pieces[at - 1] ?? "")) return false;
  const after = pieces.slice(at + 1).filter((word) => !besideDays.test(word));
  return after.every((word) => !/[.\p{L}]/u.test(word));
}

function namedMonth(
  joined: string,
  rest: { weekday: number | null; minute: number | null },
): DayText | null {
  const parts =
    /^(\d{1,2})(?:st|nd|rd|th|er|º|\.)?[\s./-]*(\p{L}+)\.?(?:[\s./-]*(\d{4}|\d{2}))?$/u.exec(
      joined,
    ) ??
    swap(/^(\p{L}+)\.?[\s./-]*(\d{1,2})(?:st|nd|rd|th)?(?:[\s./-]+(\d{4}|\d{2}))?$/u.exec(joined));
  if (parts === null) return null;
  const month = months.get(parts[2]!.toLowerCase());
  if (month === undefined) return null;
  const year =
    parts[3] === undefined ? null : Number(parts[3]) + (parts[3].length === 2 ? 2000 : 0);
  return { pair: null, month: month + 1, date: Number(parts[1]), year, dotted: false, ...rest };
}

function swap(parts: RegExpExecArray | null): readonly (string | undefined)[] | null {
  return parts === null ? null : [parts[0], parts[2], parts[1], parts[3]];
}

export type DateOrder = "day first" | "month first";

/** The day meant, once order and year are known; null when there is no such date. */
export function settleDay(text: DayText, order: DateOrder, year: number): Day | null {
  if (text.pair === null) return dayFromDate(text.year ?? year, text.month!, text.date!);
  const [first, second] = text.pair;
  return order === "day first"
    ? dayFromDate(text.year ?? year, second, first)
    : dayFromDate(text.year ?? year, first, second);
}
