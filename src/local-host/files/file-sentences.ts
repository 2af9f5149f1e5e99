import type { FileNote } from "./file-note";

type Facts = FileNote["facts"];

/** One sentence for every refusal and note about files, by code. */
const fileSentences = {
  "not-there": ({ path }: Facts) => `There is no file or folder ${path}. Check the name.`,
  "not-a-workbook": ({ path }: Facts) =>
    `${path} is neither an .xlsx file nor a folder of CSV files. Give one of these.`,
  "no-csv": ({ folder }: Facts) =>
    `${folder} holds no CSV file. Save each tab as a CSV file named for its table, such as Sets.csv.`,
  "csv-not-text": ({ file }: Facts) =>
    `${file} is not text, so it is no CSV file. Save the tab as CSV, then open that file.`,
  "csv-empty": ({ files }: Facts) =>
    `Nothing is written in ${files}. Save the tab as CSV again, then open that file.`,
  "csv-quotes": ({ file, row }: Facts) =>
    `${file} row ${row} opens a quotation mark and never closes it. Close it, then open the file again.`,
  "too-many-rows": ({ tab, rows, most }: Facts) =>
    `${tab} has ${rows} rows; at most ${most} can be opened. Split the file by season.`,
  "too-many-columns": ({ tab, columns, most }: Facts) =>
    `${tab} has ${columns} columns; at most ${most} can be opened. Delete the columns that are not needed.`,
  "too-many-cells": ({ most }: Facts) =>
    `The workbook has more than ${most} filled cells. Split the file by season.`,
  "too-many-tabs": ({ most }: Facts) => `The workbook has more than ${most} tabs. Split it.`,
  "merges-too-much": ({ tab, most }: Facts) =>
    `${tab} merges more than ${most} cells into one another, so it was not opened. Undo the merging of whole rows and columns.`,
  "file-too-large": ({ file }: Facts) =>
    `${file} is too large to be a coach's workbook, so it was not opened.`,
  "unpacks-too-large": () =>
    "The file would unpack to far more than a coach's workbook holds, so it was not opened.",
  "part-outside": ({ part }: Facts) =>
    `The file holds a part named “${part}” that points outside it, so it was not opened.`,
  "not-xlsx": () =>
    "The file is not an .xlsx workbook, or it is damaged. Save it again as .xlsx (not .xls, and without a password).",
  "save-would-lose": ({ what }: Facts) =>
    `This file holds ${what}, which would be lost by saving here. Save a copy under another name, or keep working in the program that made it.`,
  "changed-on-disk": ({ path }: Facts) =>
    `${path} was changed by another program, or in another window, since it was opened here. Nothing was written: save under another name, or open it again.`,
  "gone-from-disk": ({ path }: Facts) =>
    `${path} is no longer there. Nothing was written: save under another name.`,
  "already-there": ({ path }: Facts) =>
    `${path} is already there. Nothing was written: give another name.`,
  "not-written": ({ path, reason }: Facts) =>
    `${path} could not be written (${reason}). The old file, if there was one, is as it was.`,
  "tab-name-unfit": ({ tab, most }: Facts) =>
    `No .xlsx file can hold a tab named “${tab}”: at most ${most} signs, none of [ ] * ? : / \\ and no apostrophe at either end. Rename the tab, then save again.`,
  "tab-name-twice": ({ tab }: Facts) =>
    `Two tabs are named “${tab}”, or so but for capitals, which no .xlsx file can hold. Rename one, then save again.`,
  "table-heading": ({ cell }: Facts) =>
    `${cell} is a heading of a table: it must be a text that no other heading is, and one that formulas name must stay. Nothing was written: put it right, then it is saved.`,
  "formula-kept-as-text": ({ cell }: Facts) =>
    `${cell} begins with “=” but uses more than Holdline's formulas and arithmetic, so it was read as text.`,
  "letters-guessed": ({ file }: Facts) =>
    `${file} is not UTF-8 text; its letters were read as Windows' western ones. Check names with accents.`,
  "tab-renamed": ({ file, tab }: Facts) => `${file} became the tab “${tab}”.`,
  "cannot-save-back": ({ what }: Facts) =>
    `This file holds ${what}, which Holdline cannot keep. It can be read here; changes can only be saved as a copy.`,
} as const satisfies Record<string, (facts: Facts) => string>;

export function fileSentence({ code, facts }: FileNote): string {
  const say = (fileSentences as Record<string, ((facts: Facts) => string) | undefined>)[code];
  if (!say) throw new Error(`No sentence for ${code}.`);
  return say(facts);
}
