import { readFileSync } from "node:fs";
import { join } from "node:path";
import { recallLong } from "../../src/actions/remember-long";
import { standingText } from "../../src/actions/week/cell-text";
import type { Workbook } from "../../src/actions/workbook";
import type { WorkbookData } from "../../src/local-host/workbook-data";
import { local } from "../local-host/built";
import { smallClub } from "./small-club";
import type { Cells } from "./whole-cells";
import type { Held } from "./writing-actions";

export type ServicesHost = Awaited<ReturnType<typeof local.openHost>>;

const bundleSource = readFileSync(join(__dirname, "../../dist/code.js"), "utf8");

function firstState(): WorkbookData {
  const tabs = Object.entries(smallClub()).map(([name, rows]) =>
    local.plainTab(
      name,
      rows.map((row) => row.map((value) => (value === "" ? null : { value }))),
    ),
  );
  return { name: "Small club", tabs, names: [], properties: {} };
}

/** The small club behind the built script and the platform's services, as they were left. */
export async function openServices(left: WorkbookData = firstState()): Promise<ServicesHost> {
  return local.openHost({ workbook: left, bundleSource, files: {} });
}

/** A host as the scenarios hold one; what is to be spoilt is only noted. */
export function heldBy(host: ServicesHost, spoilt: string[]): Held {
  return {
    ask: (name, message) => host.run(name, [message]),
    type: (tab, row, column, value) => {
      host.tab(tab).getRange(row, column).setValue(value);
    },
    tabId: (name) => host.tab(name).getSheetId(),
    damage: (key) => {
      spoilt.push(key);
    },
  };
}

/** What stands in every cell, formulas as written. */
export function cellsOf(host: ServicesHost): Cells {
  return Object.fromEntries(
    host
      .spreadsheet()
      .getSheets()
      .map((sheet) => {
        const name = sheet.getName();
        const range = sheet.getDataRange();
        const formulas = range.getFormulas();
        return [
          name,
          range
            .getValues()
            .map((row, i) => row.map((value, j) => standingText(value, formulas[i]?.[j] ?? ""))),
        ];
      }),
  );
}

/** Cells and what is remembered afterwards, whichever of its two places a text is kept in. */
export function endOf(host: ServicesHost): unknown {
  const all = host.workbook().properties;
  const kept = { recallAll: () => all } as unknown as Workbook;
  const remembered = ["answers", "next week", "week changes", "season"].map((key) => {
    const found = recallLong(kept, key);
    return found.is === "text" ? ordered(JSON.parse(found.text)) : found.is;
  });
  return { cells: cellsOf(host), remembered };
}

/** The same whatever the order in which properties were named. */
export function ordered(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(ordered);
  if (value === null || typeof value !== "object") return value;
  const entries = Object.entries(value).map(([key, one]) => [key, ordered(one)] as const);
  return Object.fromEntries(entries.sort(([a], [b]) => (a < b ? -1 : 1)));
}
