import { join } from "node:path";
import type { Done } from "../../src/actions/messages";
import { readCsvFolder } from "../../src/local-host/files/read-csv-folder";
import type { WorkbookData } from "../../src/local-host/workbook-data";
import { heldBy, openServices } from "../faults/held-by-services";
import { local } from "../local-host/built";
import type { Club, HeldWorkbook, Typed } from "./held-workbook";
import { cellTexts } from "./what-stands";

/** A club, or without one the sample, behind the built script and the platform's services, as strict as they are. */
export async function clubOnServices(club?: Club): Promise<HeldWorkbook> {
  let host = await openServices(club ? emptyTabs(club) : sample());
  for (const [name, rows] of Object.entries(club?.tabs ?? {})) {
    const width = Math.max(...rows.map((row) => row.length));
    host
      .tab(name)
      .getRange(1, 1, rows.length, width)
      .setValues(rows.map((row) => Array.from({ length: width }, (_, j) => asTyped(row[j]))));
  }
  await host.settled();
  const spoilt: string[] = [];
  const held = () => heldBy(host, spoilt);
  const tabs = () =>
    host
      .spreadsheet()
      .getSheets()
      .map((sheet) => ({
        name: sheet.getName(),
        id: sheet.getSheetId(),
        values: sheet.getDataRange().getValues(),
        formulas: sheet.getDataRange().getFormulas(),
        highlights: sheet.getConditionalFormatRules().map((rule) => ({
          range: rule
            .getRanges()
            .map((range) => range.getA1Notation())
            .join(),
          colour: "",
          ...rule.look,
        })),
      }));
  return {
    ask: (name, message) => held().ask(name, message) as Done,
    type: (tab, row, column, cell) => held().type(tab, row, column, asTyped(cell)),
    tabId: (name) => held().tabId(name),
    damage: (key) => held().damage(key),
    standing: (tab) => cellTexts(tabs().find(({ name }) => name === tab)!),
    tabs,
    kept: () => host.workbook().properties,
    reopen: async () => {
      const left = host.workbook();
      const properties = { ...left.properties };
      for (const key of spoilt.splice(0)) properties[key] = "3 parts";
      host.dispose();
      host = await openServices({ ...left, properties });
    },
    close: () => host.dispose(),
  };
}

const asTyped = (cell: Typed = "") => (typeof cell === "object" ? cell.formula : cell);

function emptyTabs({ tabs, marks }: Club): WorkbookData {
  const empty = Object.keys(tabs).map((name) => {
    const mark = marks[name];
    const rules = mark ? [{ ...mark, ranges: [mark.range] }] : [];
    return { ...local.plainTab(name, []), conditionalFormats: rules };
  });
  return { name: "Club", tabs: empty, names: [], properties: {} };
}

function sample(): WorkbookData {
  const found = readCsvFolder(join(__dirname, "../../sample-sheets"), new Set());
  if (!found.ok) throw new Error(found.refusal.code);
  return found.value.workbook;
}
