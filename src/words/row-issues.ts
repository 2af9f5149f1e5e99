import { fieldHeading } from "../rows/header/field-heading";
import type { RowIssue } from "../rows/reading";
import { weekdays } from "./days";
import { impossibleDayWords } from "./impossible-day";
import { withinSentence } from "./reasons-figures";

/** What a coach reads about one issue. */
export type RowIssueWords = {
  /** What was found, in words. */
  readonly found: string;
  /** What it costs to leave it so. */
  readonly whyItMatters: string;
  /** The next step. */
  readonly whatToDo: string;
};

type Say = (issue: RowIssue) => readonly [whyItMatters: string, whatToDo: string, found?: string];

const fact = (issue: RowIssue, name: string): string => String(issue.facts[name] ?? "");
/** Meanings as our own tabs head them. */
const headed = (issue: RowIssue, name: "field" | "needed"): string =>
  fact(issue, name)
    .split(", ")
    .map((field) => fieldHeading(issue.table, field))
    .join(", ");
const column = (issue: RowIssue): string => {
  const heading = fact(issue, "heading");
  return heading === "" ? "this column" : `“${heading}”`;
};
const bounds = (issue: RowIssue): string => {
  const unit = fact(issue, "unit");
  return `${fact(issue, "low")}–${fact(issue, "high")}${unit === "" ? "" : ` ${unit}`}`;
};
/** "Type 0.62, if that is what was meant." or the plain step when nothing can be proposed. */
const mended = (issue: RowIssue, otherwise: string): string =>
  issue.facts.mend === undefined
    ? otherwise
    : `Type ${fact(issue, "mend")}, if that is what was meant.`;

/** ", said to be one for each set," or nothing when nobody says. */
const speedsSaid = (issue: RowIssue): string => {
  const said = fact(issue, "said");
  if (said === "") return "";
  return `, said to be one for each ${said === "each set" ? "set" : "repetition"},`;
};
/** "3 sets of 5 repetitions". */
const setsDone = (issue: RowIssue): string => {
  const [sets, reps] = [Number(issue.facts.sets), Number(issue.facts.reps)];
  const of = reps > 0 ? ` of ${reps} ${reps === 1 ? "repetition" : "repetitions"}` : "";
  return `${sets} ${sets === 1 ? "set" : "sets"}${of}`;
};

/** The speeds of a list that holds something else, too: "0.59 0.56"; an example where they are fewer than two. */
const speedsIn = (found: string): string => {
  const speeds = found.split(/\s+/).filter((piece) => /^\d?[.,]\d+$/.test(piece));
  return speeds.length < 2 ? "0.62 0.60" : speeds.join(" ");
};

const noSpeeds = "The sets count without their speeds: ";
const answerIt = "Answer the question under Set up, or ";
const cellOut = "This cell is left out of the figures; the rest of its row counts.";
const rowOut = "The whole row is left out of the figures.";
const columnOut = "Nothing in this column is used: no heading says what it is.";
const tableOut = "None of its rows can be used.";
const left = (issue: RowIssue): string => (issue.dropsRow ? rowOut : cellOut);

/** What to do about a name that the Athletes table does not have; `near` names who it may be, or is "". */
export function whoseName(near: string, answer: string): string {
  return near === ""
    ? "Correct the name, or add the athlete to the Athletes table."
    : `Is this ${near}? ${answer}`;
}

/** One sentence on why each issue matters and one on what to do, by code; what was found, where it is not the cell. */
export const rowIssueSentences = {
  "no-header": (issue) => [
    tableOut,
    `Give the range with its header row; the ${issue.table} table needs columns for: ${headed(issue, "needed")}.`,
    "no header row",
  ],
  "column-missing": (issue) => [
    tableOut,
    `Add a column for “${headed(issue, "field")}”, or say under Set up which column it is.`,
    `no column for “${headed(issue, "field")}”`,
  ],
  "needed-blank": (issue) => [rowOut, `Fill in ${column(issue)}, or clear the whole row.`, "blank"],
  "load-blank": (issue) => [
    "The set counts as done, but not for speed at a load.",
    `Type the load of this ${withinSentence(fact(issue, "exercise"))} set.`,
    "no load",
  ],
  "boxes-open": (issue) => [
    `From here on no box of ${fact(issue, "athlete")} is ticked: the rows up to today count as planned, not done.`,
    "Tick what was done; leave what was not.",
  ],
  "words-alone": () => [
    "Nothing else stands in its row, so no row was read from it.",
    "A comment can stay: say it is right. If it is a row, fill in its other cells.",
  ],
  "not-a-day": (issue) => [
    left(issue),
    impossibleDayWords(issue.found) ?? "Type the day it was, such as 2026-06-23.",
  ],
  "day-is-number": (issue) => [
    rowOut,
    `Format the cell as a date${issue.facts.mend === undefined ? "" : ` (it would be ${fact(issue, "mend")})`}, or type the date again.`,
  ],
  "day-implausible": (issue) => [left(issue), "Correct the year."],
  "date-order-unsettled": (issue) => [
    `${left(issue)} It could be ${fact(issue, "either")} or ${fact(issue, "or")}, and nothing in the column says which.`,
    "Say under Set up whether the day or the month comes first, or type dates as 2026-05-12.",
  ],
  "year-missing": (issue) => [
    left(issue),
    "Write the year once in the column or in the title above it.",
  ],
  "cell-error": (issue) => [
    left(issue),
    `The formula in ${issue.cell} gives an error: mend it, or type what belongs there.`,
  ],
  "not-a-number": (issue) => [
    left(issue),
    issue.facts.unit === "1 for yes"
      ? "Type 1 for yes, 0 for no."
      : issue.facts.piece === undefined
        ? `Type one number in ${column(issue)}; words belong in the note.`
        : `Type the speeds with a space between, such as ${speedsIn(issue.found)}; words belong in the note.`,
  ],
  "date-in-number": (issue) => [
    left(issue),
    `The spreadsheet made a date of what was typed in ${column(issue)}: format the cell as a number and type it again.`,
  ],
  implausible: (issue) => [
    `${left(issue)} Plausible here: ${bounds(issue)}.`,
    issue.facts.mendPiece === undefined
      ? mended(issue, "Correct it, or clear the cell.")
      : `Type ${fact(issue, "mendPiece")} for ${fact(issue, "piece")}, if that is what was meant.`,
  ],
  unsure: (issue) => [
    left(issue),
    mended(issue, "Type the number without the question mark, or clear it."),
  ],
  "comma-unsettled": (issue) => [
    `${left(issue)} It could be ${fact(issue, "either")} or ${fact(issue, "or")}.`,
    "Type the number without a thousands separator.",
  ],
  "wrong-unit": (issue) => [
    left(issue),
    `Give ${column(issue)} in ${fact(issue, "unit")}, or change its heading.`,
  ],
  "unit-unsettled": (issue) => [
    `No figure of ${column(issue)} is used: it could be ${fact(issue, "units")}.`,
    "Put the unit in the heading, for example “Load (kg)”, or answer the question under Set up.",
  ],
  "not-whole": (issue) => [
    left(issue),
    `${column(issue)} takes whole numbers: correct it, or clear the cell.`,
  ],
  "word-unknown": (issue) => [left(issue), `Use one of: ${fact(issue, "known")}.`],
  "state-undated": (issue) => [
    `${column(issue)} names no day, so nothing is decided by it.`,
    "Write it in the Availability tab, with the day it begins, or say it is right.",
  ],
  "not-yes-or-no": (issue) => [
    /privat/i.test(fact(issue, "heading"))
      ? "The row stays private until this is settled."
      : "It counts as not recorded.",
    `Type y or n in ${column(issue)}, or clear the cell.`,
  ],
  "not-a-time": () => ["The row counts without a time of day.", "Type the time as 18:00."],
  "length-unsettled": () => [
    `${cellOut} It could be hours and minutes or minutes and seconds.`,
    "Type it in minutes, or as h:mm:ss.",
  ],
  "distance-unsettled": () => [
    `${cellOut} It could be metres or kilometres.`,
    "Type the unit beside it, for example “10 km”.",
  ],
  "doubled-row": (issue) => [
    `It repeats row ${fact(issue, "earlierRow")} cell by cell; that row counts, this one does not.`,
    "Delete one of the two, or give it its own set number or time.",
    "the same row again",
  ],
  "athlete-twice": (issue) => [
    `The athlete is already in row ${fact(issue, "earlierRow")}; that row counts, this one does not.`,
    "Keep one row for each athlete.",
  ],
  "name-letters": () => [
    "The row counts, but the name may look like another and still be somebody else: it has letters of two alphabets, or signs that turn letters round.",
    "Type the name again by hand, here and in the other tabs.",
  ],
  "unknown-athlete": (issue) => [
    "The rows count for a name that the Athletes table does not know.",
    whoseName(fact(issue, "near"), "Answer in the sidebar, under Rows, or correct the name."),
  ],
  "not-a-birth-year": () => [
    "The athlete's age is not known, so under-18 rules may be missed.",
    "Type a year of four figures, or “U18”.",
  ],
  "supervisor-day": (issue) => [
    "The supervisor is not counted, so nothing is proposed for an athlete under 18.",
    issue.facts.either === undefined
      ? "Write the day as “A. Name from 2026-05-05”."
      : `Write the day as 2026-05-05: it could be ${fact(issue, "either")} or ${fact(issue, "or")}.`,
  ],
  "ends-before-start": (issue) => [
    `${rowOut} It ends ${fact(issue, "until")}, before it starts ${fact(issue, "from")}.`,
    "Correct one of the two dates.",
  ],
  "no-figure": () => [
    "The row counts as a test without a result.",
    "Fill in the height, the stack or the times.",
    "no height, stack or time",
  ],
  "stack-unreadable": () => [
    cellOut,
    "Write the plates from the bottom up as “5x15+5”: five of 15 kg and one of 5 kg.",
  ],
  "stack-count": (issue) => [
    `${cellOut} ${fact(issue, "count")} equal plates is rather a mass written before its count.`,
    "Write the count first: “5x15” is five plates of 15 kg.",
  ],
  "athlete-missing": () => [
    rowOut,
    "Say under Set up whose tab it is, or put the name above the block, in the tab's name, or in a column.",
    "no athlete above this row",
  ],
  "day-missing": (issue) => [
    rowOut,
    "Put the day of the session above its rows, such as “7 April 2026”, or in a column.",
    "week" in issue.facts
      ? `${fact(issue, "cell")}, “${fact(issue, "week")}”, names a week, not a day`
      : "no day above this row",
  ],
  "exercise-missing": (issue) => [
    issue.column > 0 && issue.found === "" ? tableOut : "Nothing under this heading can be used.",
    "Name the lift under Set up, in the title above the block, in the tab's name, or in a column.",
    "no exercise named",
  ],
  "row-unread": () => [
    rowOut,
    "Put a header above it that names at least the load, or clear the row.",
  ],
  "figures-in-rows": () => [
    rowOut,
    "Give load, repetitions and speed a column each under every date: here they stand in rows.",
    "figures in rows",
  ],
  "bar-unsettled": (issue) => [
    "The loads of this session are not used: the mass of the bar is in doubt.",
    `${answerIt}write the bar without a question mark${issue.facts.said === undefined ? "" : `, for example “bar ${fact(issue, "said")}”`}.`,
  ],
  "scheme-unread": () => [
    cellOut,
    "Write load, repetitions and sets as the heading says, for example “95x5x5 @ .62”, and an effort as “RPE 8”.",
  ],
  "scheme-order-unsettled": () => [
    `${cellOut} Sets and repetitions could be either way round.`,
    `${answerIt}spell the order out once in the heading or title, for example “kg x sets x reps”.`,
  ],
  "speeds-unsettled": ({ dropsRow }) => [
    `${dropsRow ? `${rowOut} The speeds` : `${noSpeeds}these`} could be one for each set or one for each repetition.`,
    `${answerIt}${dropsRow ? "head them “Set 1” or “Rep 1”" : "say “per set” or “per rep” in the heading of the speeds"}.`,
  ],
  "speeds-too-many": (issue) => [
    `${noSpeeds}${fact(issue, "speeds")} speeds${speedsSaid(issue)} do not fit ${setsDone(issue)}.`,
    "Correct the speeds, or the sets and repetitions beside them.",
  ],
  "speeds-twice": () => [
    `${noSpeeds}others stand beside them.`,
    "Keep the speeds in one of the two places.",
  ],
  "meaning-twice": (issue) => [
    `Neither it nor “${fact(issue, "other")}” is used, as they differ.`,
    "Correct one of the two, or clear it.",
  ],
  "heading-unknown": () => [
    columnOut,
    "Give it a heading like “Notes”, or leave it alone under Set up.",
  ],
  "figures-unread": (issue) => [
    columnOut,
    issue.facts.guess === undefined
      ? "Head it as Holdline's own tabs do, or end its heading in “notes” to leave it alone."
      : `Head it “${fact(issue, "guess")}”, if that is what it holds.`,
  ],
  "diary-question-missing": () => [
    "The answers under these dates are not used: nothing says what was asked.",
    "Write the question above the dates, for example “Sleep (h)” or “Soreness”.",
  ],
  "run-figure-unsettled": () => [
    `${cellOut} It could be minutes or kilometres.`,
    `${answerIt}say “min” or “km” in the title.`,
  ],
  "run-figure-beside": () => [
    "Its number is not used; the kind of run and the rest of its row count. It could be minutes or kilometres.",
    "Write “min” or “km” behind the number, or type it in its own column.",
  ],
  "run-unread": () => [
    cellOut,
    "Write minutes or kilometres and the kind of run, for example “45 easy” or “10 km tempo”.",
  ],
  "race-without-runner": () => [
    "The race counts for nobody.",
    "Mark who runs it, or clear the row.",
    "nobody marked",
  ],
  "nothing-to-repeat": () => [
    cellOut,
    "Write out what was done: there is nothing above or earlier in the week that it could repeat.",
  ],
  "copied-from-near-name": (issue) => [
    `Load and scheme were copied from “${fact(issue, "from")}” in row ${fact(issue, "earlierRow")}, a near spelling of this name.`,
    "Spell the name the same way, or say under Rows that they are one athlete.",
  ],
  "jump-unread": () => [
    cellOut,
    "Write a height (several as “31; 32”), a stack such as “5x15+5”, or the times as the title says.",
  ],
  "day-questioned": (issue) => [
    "The row counts on this day, which lies far from the other days of the table.",
    issue.facts.mend === undefined
      ? "Check the year, the month and the day."
      : `Type ${fact(issue, "mend")}, if day and month were swapped while typing.`,
  ],
  "weekday-questioned": (issue) => [
    `The row counts, but nobody else trained on a ${weekdays[Number(issue.facts.weekday)]}.`,
    `Type ${fact(issue, "mend")}, if day and month were swapped while typing.`,
  ],
  "plate-twice": (issue) => [
    `Row ${fact(issue, "earlierRow")} already gives ${fact(issue, "massKg")} kg another thickness; that one is used.`,
    "Keep one thickness for each mass, or stack only plates of one maker.",
  ],
  "rule-unknown": (issue) => [
    "Nothing follows from this row.",
    issue.facts.near === undefined
      ? "Use the name of a rule as Set up lists them under Rules."
      : `Is this “${fact(issue, "near")}”? Type it so, or the name of another rule as Set up lists them.`,
  ],
  "rule-twice": (issue) => [
    `Row ${fact(issue, "earlierRow")} sets this rule already; that value is used.`,
    "Keep one row for each rule.",
  ],
  "rule-out-of-bounds": (issue) => [
    `The usual value is used instead. Allowed: ${bounds(issue)}.`,
    mended(issue, "Type a value within the bounds."),
  ],
} as const satisfies Readonly<Record<string, Say>>;

export type RowIssueCode = keyof typeof rowIssueSentences;

/** What was found in a cell, why it matters and what to do. */
export function sayRowIssue(issue: RowIssue): RowIssueWords {
  const say: Say | undefined = (rowIssueSentences as Readonly<Record<string, Say>>)[issue.code];
  // A code without its sentence is our own mistake; a test walks every code.
  if (say === undefined) throw new Error(`no sentence for the row issue ${issue.code}`);
  const [whyItMatters, whatToDo, found] = say(issue);
  return {
    found: found ?? (issue.found === "" ? "blank" : `“${issue.found}”`),
    whyItMatters,
    whatToDo,
  };
}
