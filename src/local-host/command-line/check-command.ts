import type { NameQuestion, RowCheckView, RowProblem } from "../../actions/messages";
import { leftAloneWords } from "../../words/row-check";
import { kindCounts } from "../../words/row-kinds";
import type { Asked } from "./arguments";
import { foundTables } from "./found-tables";
import { needsALook } from "./needs-a-look";
import { openedWorkbook } from "./opened-workbook";
import { dayBesideToday } from "./squad-command";
import { Refused, type Surroundings } from "./surroundings";
import { textTable } from "./text-table";

/** Prints every row problem of every table that is recognised; any problem makes the status 1. */
export async function checkCommand(asked: Asked, around: Surroundings): Promise<number> {
  const { host, workbook } = await openedWorkbook(asked.workbook, around);
  try {
    const today = dayBesideToday(workbook) ?? around.today();
    const tables = foundTables(host, workbook, today);
    if (tables.length === 0) {
      throw new Refused(
        "No tab is a table that Holdline knows. Give each a header row, such as Date, Athlete, Exercise, Load.",
      );
    }
    const checked = host.run("rowCheck", [{ today }]) as RowCheckView;
    const { summary, problems, names, waiting, leftAlone } = checked;
    const kinds = kindCounts(checked);
    if (asked.json) {
      const plain = problems.map(asPlain);
      const found = { summary, tables, kinds, problems: plain, names, waiting, leftAlone };
      around.out(`${JSON.stringify(found, null, 2)}\n`);
    } else {
      around.out(screen(problems, names));
      if (kinds.length > 0) {
        around.out(`${kinds.map(({ kind, count }) => `${kind}: ${count}`).join(" · ")}\n`);
      }
      around.out(`${summary}\n`);
      if (waiting !== "") around.out(`${waiting}\n`);
      if (leftAlone.length > 0) around.out(`${leftAloneWords(leftAlone)}\n`);
    }
    const count = problems.length + names.length;
    if (count === 0) return 0;
    around.err(`${needsALook(count)}.\n`);
    return 1;
  } finally {
    host.dispose();
  }
}

function asPlain({ tab, cell, found, why, toDo, mend }: RowProblem) {
  return { cell: `${tab} ${cell}`, found, why, toDo, mend };
}

function screen(problems: readonly RowProblem[], names: readonly NameQuestion[]): string {
  const lines = problems.map(({ tab, cell, found, why, toDo }) => [
    `${tab} ${cell}`,
    found,
    why,
    toDo,
  ]);
  const head = ["Cell", "Found", "Why it matters", "What to do"];
  const cells = lines.length === 0 ? "" : `${textTable([head, ...lines])}\n`;
  const asked = names.map(({ name, tab, cell, rows, toDo }) => [
    `${tab} ${cell}`,
    name,
    `${rows} ${rows === 1 ? "row" : "rows"}`,
    toDo,
  ]);
  const nameHead = ["Cell", "Name not among the athletes", "In", "What to do"];
  return cells + (asked.length === 0 ? "" : `${textTable([nameHead, ...asked])}\n`);
}
