import { catalogue } from "./index";
import type { SheetFunction } from "./sheet-function";

/** The README's table of formulas in Markdown, one row for each. */
export function readmeTable(): string {
  return [
    "| formula | gives | columns of the result |",
    "|---|---|---|",
    ...catalogue.map(row),
  ].join("\n");
}

/** The table between its two marks in a README. Throws when the marks are not there once each. */
export function withTable(readme: string): string {
  const parts = /^([\s\S]*<!-- formulas -->\n)[\s\S]*?(\n<!-- \/formulas -->[\s\S]*)$/.exec(readme);
  if (!parts) throw new Error("README.md has no <!-- formulas --> and <!-- /formulas --> lines");
  return `${parts[1]}${readmeTable()}${parts[2]}`;
}

function row({ name, summary, parameters, results }: SheetFunction): string {
  const names = parameters.map(({ name: parameter, optional }) =>
    optional ? `[${parameter}]` : parameter,
  );
  return `| \`${name}(${names.join(", ")})\` | ${cell(summary)} | ${cell(results.join("; "))} |`;
}

/** An upright line would end a Markdown cell. */
const cell = (text: string) => text.replace(/\|/g, "\\|");
