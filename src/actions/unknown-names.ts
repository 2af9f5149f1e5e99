import { nameKey } from "../coaching/record/name-key";
import { cellOfName } from "../rows/name/cell-of-name";
import { withNames } from "../rows/name/name-answers";
import { nameIssues } from "../rows/name/name-issues";
import { proposeNames } from "../rows/name/propose-names";
import { nameQuestionWords } from "../words/row-check";
import type { NameQuestion } from "./messages";
import { type ReadWorkbook, sureEnough } from "./read-workbook";

type Named = { readonly row: number; readonly athlete: string };

/**
 * Names in the rows that the Athletes table does not have, each once over all tables, at the first
 * cell that carries it. Without an Athletes table only near spellings among the rows are asked about.
 */
export function unknownNames(read: ReadWorkbook): NameQuestion[] {
  const tables = read.tabs
    .filter(({ sureness, table }) => sureness >= sureEnough && carriesNames.has(table))
    .map((one) => ({ ...one, records: withNames(namesOf(one), read.answers.names) }));
  const all = tables.flatMap(({ records }) => records);
  const athletes = read.rows.athletes;
  const proposals = proposeNames(
    all,
    athletes.map(({ athlete }) => athlete),
    read.answers.names,
  );
  const may = new Map(
    proposals.map(({ written, may: near }) => [
      nameKey(written),
      near.map(({ athlete }) => athlete),
    ]),
  );
  const questions = new Map<string, NameQuestion>();
  for (const { tab, table, records, understanding } of tables) {
    const column = understanding.columns.find(({ field }) => field === "athlete")?.column ?? null;
    for (const issue of nameIssues(table, records, athletes)) {
      const key = nameKey(issue.found);
      const near = may.get(key) ?? [];
      if (athletes.length === 0 && near.length === 0) continue;
      const before = questions.get(key);
      const rows = Number(issue.facts.rows);
      questions.set(
        key,
        before
          ? { ...before, rows: before.rows + rows }
          : {
              name: issue.found,
              tab: tab.name,
              tabId: tab.id,
              cell: cellOfName(read.cells(tab.id), issue.row, column, issue.found),
              rows,
              near,
              toDo: nameQuestionWords(near),
            },
      );
    }
  }
  return [...questions.values()];
}

const carriesNames: ReadonlySet<string> = new Set([
  "Sets",
  "Jumps",
  "Diary",
  "Runs",
  "Availability",
]);

function namesOf({ understanding }: ReadWorkbook["tabs"][number]): readonly Named[] {
  return understanding.reading.records as readonly Named[];
}
