import { plainWords } from "../../header/header-words";
import type { TableView } from "../../table-view";
import type { TestColumn } from "./test-column";
import { unitInHeading } from "./unit-in-heading";

/** "Try 1", "Attempt 2", "3" beside a column of tests: the tries of the row's own test. */
export function numberedTries({ cells, headerRow, fields }: TableView): TestColumn[] {
  // Among exercises a set may be one of lifts.
  const ofTests = fields.test?.words !== "exercise";
  const columns = cells[headerRow]!.flatMap((cell, index): TestColumn[] => {
    const heading = String(cell ?? "").trim();
    const words = plainWords(heading);
    const number = numberOfTry.exec(ofTests ? words.replace(/^set /, "") : words)?.[1];
    if (number === undefined) return [];
    return [
      {
        index,
        heading,
        test: "",
        part: "height",
        unit: unitInHeading(heading),
        attempt: Number(number) - 1,
      },
    ];
  });
  return columns.length > 1 && columns.every(({ attempt }, at) => attempt === at) ? columns : [];
}

/** A heading that numbers a try and says no more. */
export const numberOfTry =
  /^(?:(?:try|attempt|trial|jump|versuch|sprung|intento|essai|proba)\.? ?)?#?([1-9])(?: ?\(?(?:cm|m|in)\)?)?$/;

/** True where a row's tries stand in numbered columns beside its test. */
export function hasNumberedTries(view: TableView): boolean {
  return numberedTries(view).length > 0;
}
