import type { Asked } from "./arguments";
import { foundTables } from "./found-tables";
import { openedWorkbook } from "./opened-workbook";
import { Refused, type Surroundings } from "./surroundings";
import { textTable } from "./text-table";

type Problem = {
  readonly cell: string;
  readonly found: string;
  readonly why: string;
  readonly todo: string;
};

/** Prints every row problem of every table that is recognised; any problem makes the status 1. */
export async function checkCommand(asked: Asked, around: Surroundings): Promise<number> {
  const { host, workbook } = await openedWorkbook(asked.workbook, around);
  try {
    const tables = await foundTables(host, workbook);
    if (tables.length === 0) {
      throw new Refused(
        "No tab is a table that Holdline knows. Give each a header row, such as Date, Athlete, Exercise, Load.",
      );
    }
    const problems: Problem[] = [];
    let rows = 0;
    let troubled = 0;
    for (const { table, tab, range } of tables) {
      const answer = await host.evaluate(`=ROW_CHECK(${range}, "${table}")`);
      if (!answer.ok) throw new Refused(`${tab}: ${answer.sentence}`);
      const lines = workbook.tabs.find(({ name }) => name === tab)?.cells ?? [];
      rows += lines.filter((line) => line.some((cell) => cell !== null)).length - 1;
      const marked = new Set<string>();
      for (const [cell, found, todo, why] of answer.values.map((row) => row.map(String))) {
        if (cell === "all rows read") continue;
        marked.add(/\d+$/.exec(cell!)?.[0] ?? cell!);
        problems.push({ cell: `${tab} ${cell}`, found: found!, why: why!, todo: todo! });
      }
      troubled += marked.size;
    }
    const grouped = (count: number) => count.toLocaleString("en-GB");
    const summary = `${grouped(rows - troubled)} of ${grouped(rows)} rows read without a question`;
    if (asked.json) {
      const read = { rows, rowsInQuestion: troubled };
      around.out(`${JSON.stringify({ ...read, tables, problems }, null, 2)}\n`);
    } else {
      const shown = problems.map(({ cell, found, why, todo }) => [cell, found, why, todo]);
      const head = ["Cell", "Found", "Why it matters", "What to do"];
      if (problems.length > 0) around.out(`${textTable([head, ...shown])}\n`);
      around.out(`${summary}\n`);
    }
    if (problems.length === 0) return 0;
    around.err(
      `${problems.length} ${problems.length === 1 ? "cell needs" : "cells need"} a look.\n`,
    );
    return 1;
  } finally {
    host.dispose();
  }
}
