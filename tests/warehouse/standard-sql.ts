import { readFileSync } from "node:fs";
import { join } from "node:path";

const sql = () => readFileSync(join(process.cwd(), "dist/warehouse/holdline.sql"), "utf8");

/**
 * The part of a function's question that groups the rows, from the SQL as it is built. Nothing of it
 * is rewritten but two spellings in which the database here differs: what it calls the types STRING
 * and FLOAT64, and a struct of named columns.
 */
export function groupingOf(name: string): string {
  const from = sql().indexOf(`-- ${name} of every athlete of every squad.`);
  const question = sql().slice(from);
  const grouping = question.slice(
    question.indexOf("WITH "),
    question.indexOf("\nSELECT squad, answer"),
  );
  return grouping
    .replace(/\bSTRING\b/g, "VARCHAR")
    .replace(/\bFLOAT64\b/g, "DOUBLE")
    .replace(/STRUCT\(((?:[^()]|\([^()]*\))*)\)/g, (_, fields: string) => {
      const named = fields.split(/,(?![^(]*\))/).map((field) => {
        const one = field.trim();
        const [, value = one, column = one] = /^(.*) AS (\w+)$/s.exec(one) ?? [];
        return `${column} := ${value}`;
      });
      return `struct_pack(${named.join(", ")})`;
    });
}

/** What the SQL declares of a function: its parameters' names, and the columns of its answer. */
export function declarationOf(name: string): {
  readonly parameters: readonly string[];
  readonly answer: readonly string[];
  readonly called: string;
} {
  const sqlName = name.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
  const from = sql().indexOf(`CREATE OR REPLACE FUNCTION FUNCTIONS.${sqlName}(`);
  const [, given = "", answer = "", called = ""] =
    /FUNCTION FUNCTIONS\.\w+\(([\s\S]*?)\)\nRETURNS (.*)\nLANGUAGE js[\s\S]*?return (.*);/.exec(
      sql().slice(from),
    ) ?? [];
  const named = (text: string) => [...text.matchAll(/(\w+) (?:STRING|FLOAT64|BOOL|ARRAY|STRUCT)/g)];
  return {
    parameters: named(given.replace(/<[\s\S]*>/, "")).map(([, column]) => column!),
    answer: named(answer).map(([, column]) => column!),
    called,
  };
}
