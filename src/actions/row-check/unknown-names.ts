import { nameKey } from "../../coaching/record/name-key";
import type { Race } from "../../coaching/record/race";
import { cellOfName } from "../../rows/name/cell-of-name";
import { nobody, saidDifferent, withNames } from "../../rows/name/name-answers";
import { nameIssues } from "../../rows/name/name-issues";
import { proposeNames } from "../../rows/name/propose-names";
import { raceNames, withRaceNames } from "../../rows/name/race-names";
import { nameQuestionWords } from "../../words/row-check";
import type { NameQuestion } from "../messages";
import { type ReadWorkbook, sureEnough } from "../read-workbook";

type Named = { readonly row: number; readonly athlete: string };

/**
 * Names in the rows that the Athletes table does not have, each once over all tables, at the first
 * cell that carries it; one that is not in the squad, as the coach has said, is not asked about again. Without an Athletes table only near spellings among the rows are asked about.
 */
export function unknownNames(read: ReadWorkbook): NameQuestion[] {
  const { athletes } = read.rows;
  const tables = read.tabs
    .filter(({ sureness, table }) => sureness >= sureEnough && carriesNames.has(table))
    .map((one) => ({ ...one, records: namesOf(one, read) }));
  const all = tables.flatMap(({ records }) => records);
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
    const named = table === "Races" ? "who" : "athlete";
    const column = understanding.columns.find(({ field }) => field === named)?.column ?? null;
    for (const issue of nameIssues(table, records, athletes)) {
      const key = nameKey(issue.found);
      const near = may.get(key) ?? [];
      if (athletes.length === 0 && near.length === 0) continue;
      if (saidDifferent(read.answers.names, issue.found, nobody)) continue;
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
              toDo: nameQuestionWords(near, table === "Races"),
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
  "Races",
]);

/** Names in a tab's rows, answered spellings put right; those of races only beside a list of athletes. */
function namesOf(
  { table, understanding }: ReadWorkbook["tabs"][number],
  { rows: { athletes }, answers }: ReadWorkbook,
): readonly Named[] {
  const { records } = understanding.reading;
  if (table !== "Races") return withNames(records as readonly Named[], answers.names);
  const races = withRaceNames(records as readonly Race[], answers.names, athletes);
  return athletes.length === 0 ? [] : raceNames(races, athletes);
}
