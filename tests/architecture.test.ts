import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";

/** What each folder of src may import besides itself and outcome.ts. */
const may: Record<string, readonly string[]> = {
  statistics: ["simple-statistics", "jstat"],
  coaching: ["statistics"],
  rows: ["coaching", "zod/mini"],
  words: ["coaching", "rows"],
  catalogue: ["coaching", "rows", "words"],
  actions: ["coaching", "rows", "words", "catalogue", "zod/mini"],
  sidebar: ["actions/messages", "actions/page-messages", "words", "charts", "pages", "preact"],
  charts: ["words", "preact"],
  pages: ["actions/messages", "actions/page-messages", "words", "charts", "preact"],
  // What a date is, of whatever realm, is known in one place.
  "apps-script": ["catalogue", "actions", "words", "rows/value/is-date"],
  "local-host": [
    "actions/messages",
    "words",
    "node:",
    "@univerjs/",
    "react",
    "rxjs",
    "exceljs",
    "papaparse",
    "fflate",
  ],
  // The build reads its own sources: entries lose their help, which the declarations carry.
  bundle: ["catalogue", "words", "esbuild", "@swc/core", "node:"],
  // The same formulas for rows kept in a warehouse: nothing of a spreadsheet's host.
  warehouse: ["catalogue", "words"],
};
const pure = /^(statistics|coaching|rows|words|catalogue|warehouse)\//;

const src = join(__dirname, "../src");
const files = (readdirSync(src, { recursive: true }) as string[]).filter((file) =>
  /\.(ts|tsx|mjs)$/.test(file),
);
const text = (file: string) => readFileSync(join(src, file), "utf8");
const imports = (file: string) =>
  [...text(file).matchAll(/(?:\bfrom|\bimport\(?|\brequire\()\s*["']([^"'\s,]+)["']/g)].map(
    ([, to]) => (to!.startsWith(".") ? relative(src, join(src, dirname(file), to!)) : to!),
  );

test("every folder of src is in the table", () => {
  const folders = new Set(files.filter((f) => f.includes("/")).map((file) => file.split("/")[0]!));
  expect([...folders].filter((folder) => !(folder in may))).toEqual([]);
});

test.each(files)("%s imports only what its folder may", (file) => {
  const folder = file.split("/")[0]!;
  const allowed = ["outcome", folder, ...(may[folder] ?? [])];
  const stray = imports(file).filter(
    (to) =>
      !allowed.some(
        (a) => to === a || to.startsWith(`${a}/`) || (/[:/]$/.test(a) && to.startsWith(a)),
      ),
  );
  expect(stray).toEqual([]);
});

test.each(files.filter((file) => pure.test(file)))("%s is handed clock and chance", (file) => {
  expect(text(file)).not.toMatch(/new Date\(\)|Date\.now|Math\.random/);
});

test("the spreadsheet's host is named in its shells alone", () => {
  const shell = /^(?:apps-script|local-host)\//;
  const naming = files.filter(
    (file) =>
      !shell.test(file) &&
      /\b(?:SpreadsheetApp|HtmlService|PropertiesService|LockService)\b/.test(text(file)),
  );
  expect(naming).toEqual([]);
});
