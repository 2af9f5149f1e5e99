import { ownPercent } from "../coaching/hold/own-percent";
import type {
  HoldMeasure,
  MeasureKind,
  MovedValue,
  SeasonHold,
} from "../coaching/hold/season-hold";
import { fallenAlone, fallenUncalled, lastCompared, oldSince } from "../coaching/hold/word-caveats";
import { dayWords } from "./days";
import { countWords, percentWords, signedPercentWords, withinSentence } from "./reasons-figures";

/** How a value is called: "back squat speed", "box jump", "contact time". */
export function valueWords({ kind, of }: { kind: MeasureKind; of: string }): string {
  const name = withinSentence(of);
  if (kind === "bar speed") return `${name} speed`;
  return kind === "jump height" ? name : kind;
}

/** "12 May (± 10 days)"; "–" without an onset. */
export function sinceWords({ sinceDay, sinceFrom, sinceTo }: SeasonHold): string {
  if (sinceDay === null) return "–";
  if (sinceFrom === null || sinceTo === null) return dayWords(sinceDay);
  const days = Math.max(sinceDay - sinceFrom, sinceTo - sinceDay);
  return days === 0 ? dayWords(sinceDay) : `${dayWords(sinceDay)} (± ${countWords(days, "day")})`;
}

/** The word as a cell shows it; `too few rows` says how many more of what. */
export function holdWords(hold: SeasonHold): string {
  return hold.word === "too few rows" ? `too few rows (${missingWords(hold)})` : hold.word;
}

/** "3 more back squat sessions" */
function missingWords({ needed, notes }: SeasonHold): string {
  const least = [...needed].sort((a, b) => a.rows - b.rows)[0];
  if (!least) {
    return notes.some(({ code }) => code === "no-rows")
      ? "no sets or jumps recorded"
      : "no value recorded that can be followed";
  }
  const what = least.kind === "bar speed" ? withinSentence(least.of) : valueWords(least);
  return `${countWords(least.rows, `more ${what} session`)}`;
}

/** "back squat speed 8 % under baseline"; contact time says longer or shorter. */
export function movedWords(measure: HoldMeasure | MovedValue): string {
  const { change, kind, nowValue, baselineValue } = measure;
  const name = valueWords(measure);
  if (change === null || nowValue === null) return `${name}: no session since the baseline`;
  if (kind === "contact time") {
    const longer = 100 * (nowValue / baselineValue - 1);
    const ms = Math.round(1000 * nowValue);
    return `${name} ${percentWords(longer)} ${longer < 0 ? "shorter" : "longer"} (${ms} ms)`;
  }
  return `${name} ${percentWords(change)} ${change < 0 ? "under" : "over"} baseline`;
}

/** "last compared on 15 May" of a speed whose setting has changed since, with its name where another value is named; "" otherwise. */
export function lastComparedWords(hold: SeasonHold): string {
  const last = lastCompared(hold);
  if (last === null) return "";
  const words = `last compared on ${dayWords(last.day)}`;
  return last.named ? words : `${valueWords(last.measure)} ${words}`;
}

/**
 * Why the season has its word, in one line: which value, how far, since when, its wobble, how many
 * sessions against how many, and for holding what loss would have shown.
 *
 * @param sinceToldBeside since when stands beside the word already
 */
export function holdReason(hold: SeasonHold, sinceToldBeside = false): string {
  const { word, value } = hold;
  if (word === "too few rows" || !value) return holdWords({ ...hold, word: "too few rows" });
  const counts = `${countWords(value.rowsSince, "session")} against ${value.baselineRows}`;
  const wobble = `wobble ${percentWords(value.wobble)}`;
  const last = oldSince(hold);
  const old = last === null ? "" : `; nothing measured since ${dayWords(last)}`;
  if (word === "slipping" || word === "rising") {
    const since = sinceToldBeside ? "" : ` since about ${sinceWords(hold)}`;
    return `${movedWords(value)}${since}, ${wobble}, ${counts}${old}`;
  }
  const now =
    value.change === null
      ? movedWords(value)
      : `${valueWords(value)} ${signedPercentWords(ownPercent(value.kind, value.change))} from baseline, ${wobble}, last ${counts}`;
  const compared = lastCompared(hold);
  if (compared?.named) return `${now}; ${lastComparedWords(hold)}`;
  const other = compared === null ? "" : `; ${lastComparedWords(hold)}`;
  if (old !== "") return `${now}${old}${other}`;
  const visible =
    hold.visibleFall === null
      ? ""
      : fallenUncalled(hold)
        ? fallenAlone(hold)
          ? "; a loss in one value alone takes longer to be called"
          : "; if that lasts, it would usually show within six more sessions"
        : `; a loss of ${percentWords(hold.visibleFall)} would usually show within six more sessions`;
  return `${now}${visible}${other}`;
}
