import { readFileSync } from "node:fs";
import { join } from "node:path";
import { standingText } from "../../src/actions/week/cell-text";
import type { WorkbookData } from "../../src/local-host/workbook-data";
import { local } from "../local-host/built";
import { rememberedIn } from "./remembered";
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
  const host = await local.openHost({ workbook: left, bundleSource, files: {} });
  const dispose = () => {
    open.delete(dispose);
    host.dispose();
  };
  open.add(dispose);
  return { ...host, dispose };
}

/** A test that failed leaves its workbook open, and an open one keeps the run from ending. */
const open = new Set<() => void>();
afterAll(() => {
  for (const dispose of open) dispose();
});

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
  return { cells: cellsOf(host), remembered: rememberedIn(host.workbook().properties) };
}
