import type { Parameter } from "./sheet-function";

/** Parameters that many formulas share, with one wording. */
export const athletesParameter: Parameter = {
  name: "athletes",
  help: "A name or names, or the Athletes table with its header row.",
};
export const setsParameter: Parameter = {
  name: "sets",
  help: "The whole Sets table with its header row.",
};
export const jumpsParameter: Parameter = {
  name: "jumps",
  help: "The whole Jumps table with its header row.",
};
export const diaryParameter: Parameter = {
  name: "diary",
  help: "The Diary table with its header row and its Private column: private words are not shown.",
};
export const runsParameter: Parameter = {
  name: "runs",
  help: "The Runs table with its header row.",
};
export const racesParameter: Parameter = {
  name: "races",
  help: "The Races table with its header row.",
};
export const exerciseParameter: Parameter = {
  name: "exercise",
  help: "The lift, as the Sets table writes it.",
};
export const asOfParameter: Parameter = {
  name: "as_of",
  help: "A date; only rows up to and including it count.",
};
export const platesParameter: Parameter = {
  name: "plates",
  help: "The Plates table with its header row, for jumps onto stacks.",
  optional: true,
};
export const rulesParameter: Parameter = {
  name: "rules",
  help: "The Rules table with its header row; else the usual values.",
  optional: true,
};
