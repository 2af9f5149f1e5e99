import type { HoldNote, MeasureKind } from "../coaching/hold/season-hold";
import { dayWords } from "./days";
import { countWords, percentWords, trimmed, withinSentence } from "./reasons-figures";
import { valueWords } from "./reasons-hold";

type Facts = HoldNote["facts"];

const settingWords: Readonly<Record<string, string>> = {
  tool: "tool",
  gym: "gym",
  speedIs: "kind of speed",
  barKg: "bar",
  figure: "figure for the set",
  lift: "lift",
  test: "jump test",
  attempts: "number of attempts a day",
};

/** "another tool (phone cam; baseline: Pod A)" */
export function otherSettingWords({ what, before, after }: Facts): string {
  const thing = settingWords[String(what)] ?? "setting";
  const named = (value: string | number | undefined) =>
    value === "" || value === undefined
      ? "not recorded"
      : what === "barKg"
        ? `${trimmed(Number(value), 1)} kg`
        : String(value);
  return `another ${thing} (${named(after)}; baseline: ${named(before)})`;
}

function settingChange(facts: Facts): string {
  const { sessions, sinceDay, of, before } = facts;
  const many = countWords(Number(sessions), "session");
  const are = Number(sessions) === 1 ? "is" : "are";
  return `${many}${of === undefined || of === before ? "" : ` of ${withinSentence(String(of))}`} from ${dayWords(Number(sinceDay))} with ${otherSettingWords(facts)} ${are} not compared`;
}

const measure = ({ kind, of }: Facts) =>
  valueWords({ kind: String(kind) as MeasureKind, of: String(of) });

const sharedDate = (facts: Facts) =>
  `${Number(facts.athletes)} of ${Number(facts.followed)} athletes followed are ${String(facts.word)} in ${String(facts.reading)} from about ${dayWords(Number(facts.day))}${howShared(facts)}`;

/** How a change of many together came, or where one that came at once is looked for first. */
function howShared({ how, reading, word }: Facts): string {
  const bars = reading === "bar speed";
  if (how === "at once")
    return `: look at the tool${bars ? "" : ", the floor or the plates"} first`;
  if (how !== "in both") return ", little by little";
  return `, and the squad’s ${bars ? "jumps" : "bar speeds"} ${word === "rising" ? "rose" : "fell"} too`;
}

/** What that speaks for, and what to look at. */
function whatOfShared({ how, word }: Facts): string {
  const isRise = word === "rising";
  if (how === "at once")
    return `; if nothing changed there, the ${isRise ? "rise" : "fall"} is theirs`;
  const tool = how === "in both" ? "no one tool does" : "a tool seldom does";
  return `, which ${tool}: ${isRise ? "the rise is likely theirs" : "look at what they had in common, such as runs, races, travel or illness"}`;
}

const newTool = ({ day }: Facts) =>
  `a note of ${dayWords(Number(day))} tells of another tool, mat, shoes or floor`;

const sentences: Readonly<Record<string, (facts: Facts) => string>> = {
  "setting-changed": (facts) =>
    `${settingChange(facts)}.${facts.ownBaseline ? " New baseline dates in the Athletes table would follow them." : ""}`,
  "setting-changed-in-baseline": (facts) =>
    `${settingChange(facts)}: the setting changed within the baseline. A baseline of about six sessions with one tool is better.`,
  "drop-height-changed": ({ test, sessions, sinceDay, usualCm }) =>
    `${countWords(Number(sessions), "day")} of ${withinSentence(String(test))} from ${dayWords(Number(sinceDay))} ${usualCm === "" ? "with a drop height, which the baseline lacks," : `without the baseline’s drop height of ${trimmed(Number(usualCm), 1)} cm`} ${Number(sessions) === 1 ? "is" : "are"} not compared.`,
  "heights-not-read": ({ test, attempts }) =>
    `${countWords(Number(attempts), "attempt")} of ${withinSentence(String(test))} gave no height: a plate not measured or not owned, or a flight time that is not possible.`,
  "measure-not-followed": (facts) =>
    `${measure(facts)} is not followed: fewer than three readings in the baseline. New baseline dates in the Athletes table would follow it.`,
  "no-falling-line": (facts) =>
    `${measure(facts)} is not followed: in the baseline it does not fall as the load rises. Check loads and speeds of those days.`,
  "measure-needs-rows": ({ rows, ...facts }) =>
    `${measure(facts)} is not followed yet: ${countWords(Number(rows), "more reading")} needed.`,
  "baseline-stretched": ({ to, ...facts }) =>
    `${measure(facts)} is taken less often than the athlete trains: its baseline runs to its third reading, ${dayWords(Number(to))}.`,
  "baseline-short": ({ sessions }) =>
    `The baseline’s dates hold ${countWords(Number(sessions), "session")}; about six are better.`,
  "read-in-steps": ({ of, percent }) =>
    `${withinSentence(String(of))} is read in steps of ${percentWords(Number(percent))}, coarser than its wobble.`,
  "long-season": ({ weeks }) =>
    `The baseline lies ${Number(weeks)} weeks back; set new baseline dates in the Athletes table.`,
  "one-date": (facts) => `${sharedDate(facts)}${whatOfShared(facts)}.`,
  "new-tool-noted": (facts) =>
    `${newTool(facts)}: look at that first. If it reads otherwise, new baseline dates in the Athletes table would follow it.`,
  "serial-correlation": ({ correlation }) =>
    `Sessions here resemble the ones before them (correlation ${trimmed(Number(correlation), 2)}), so more of them are asked for before a change is named.`,
  "sets-far-off": ({ sets, exercise, day, loadKg, speed }) =>
    `${countWords(Number(sets), "set")} of ${withinSentence(String(exercise))} ${Number(sets) === 1 ? "is" : "are"} far off all the others, ${Number(sets) === 1 ? "" : "the first "}on ${dayWords(Number(day))}: ${trimmed(Number(loadKg), 1)} kg at ${trimmed(Number(speed), 2)} m/s. Check load and speed there.`,
  "sudden-change": (facts) =>
    `${measure(facts)}: the last two readings are each three or more wobbles off, too far to wait for more.`,
  "no-rows": ({ athlete, near = "" }) =>
    `No sets or jumps of ${String(athlete)} in the rows given${near === "" ? "" : `: is this ${near}? Write one name in both tabs`}.`,
};

/** What a note states, where more than that is said of it. */
const statements: Readonly<Record<string, (facts: Facts) => string>> = {
  "setting-changed": settingChange,
  "setting-changed-in-baseline": settingChange,
  "one-date": sharedDate,
  "new-tool-noted": newTool,
};

/** A note in plain words. */
export const noteWords = (note: HoldNote): string => said(sentences, note);

/** What a note states, without what to do about it; for paper. */
export const noteStatement = (note: HoldNote): string =>
  statements[note.code] ? `${said(statements, note)}.` : noteWords(note);

function said(words: typeof sentences, { code, facts }: HoldNote): string {
  const sentence = words[code];
  if (!sentence) throw new Error(`no words for the note ${code}`);
  const text = sentence(facts);
  return text.charAt(0).toUpperCase() + text.slice(1);
}
