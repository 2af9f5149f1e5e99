import { neededFields, tableColumns } from "../rows/header/columns";
import { fieldHeading } from "../rows/header/field-heading";
import { tableNames } from "../rows/table-name";
import { catalogue } from "./index";
import type { SheetFunction } from "./sheet-function";

/** The README's table of formulas in Markdown, one row for each, with an example as it is typed. */
export function readmeTable(): string {
  return [
    "| formula | gives | columns of the result | typed, for example |",
    "|---|---|---|---|",
    ...catalogue.map(row),
  ].join("\n");
}

/** The README's table of the columns that each table of rows may have, by our own headings. */
export function columnsTable(): string {
  const rows = tableNames.map((table) => {
    const needed: readonly string[] = neededFields[table];
    const headings = Object.keys(tableColumns[table]).map(
      (field) => `${needed.includes(field) ? "★ " : ""}${fieldHeading(table, field)}`,
    );
    return `| ${table} | ${cell(headings.join(", "))} |`;
  });
  return ["| table | columns (★ needed) |", "|---|---|", ...rows].join("\n");
}

/** Both tables between their marks in a README. Throws when a mark is not there once. */
export const withTables = (readme: string): string =>
  between(between(readme, "formulas", readmeTable()), "columns", columnsTable());

function between(readme: string, mark: string, table: string): string {
  const parts = readme.split(new RegExp(`(?<=<!-- ${mark} -->\\n)|(?=\\n<!-- /${mark} -->)`));
  if (parts.length !== 3)
    throw new Error(`README.md has no <!-- ${mark} --> and <!-- /${mark} --> lines`);
  return `${parts[0]}${table}${parts[2]}`;
}

function row({ name, summary, parameters, results, examples }: SheetFunction): string {
  const names = parameters.map(({ name: parameter, optional }) =>
    optional ? `[${parameter}]` : parameter,
  );
  const ranged = examples.find(({ formula }) => formula.includes(":")) ?? examples[0]!;
  const columns = cell(results.join("; "));
  return `| \`${name}(${names.join(", ")})\` | ${cell(summary)} | ${columns} | \`${cell(ranged.formula)}\` |`;
}

/** An upright line would end a Markdown cell. */
const cell = (text: string) => text.replace(/\|/g, "\\|");
