import type { Highlight, Tab, Workbook, Written } from "../actions/workbook";
import { spreadsheetWords } from "../words/spreadsheet";
import { SheetClock } from "./sheet-clock";
import { SheetLanguage } from "./sheet-language";

/** How long one coach's action waits for another's, ms. */
const patienceMs = 20_000;

/** The open spreadsheet, as our actions see one. */
export function sheetWorkbook(): Workbook {
  const spreadsheet = SpreadsheetApp.getActive();
  const clock = new SheetClock(() => spreadsheet.getSpreadsheetTimeZone());
  const language = new SheetLanguage(() => spreadsheet.getSpreadsheetLocale());
  const sheetOf = (tabId: number) => {
    const sheet = spreadsheet.getSheetById(tabId);
    if (!sheet) throw new Error(spreadsheetWords.tabGone);
    return sheet;
  };
  const tabOf = (sheet: GoogleAppsScript.Spreadsheet.Sheet): Tab => ({
    id: sheet.getSheetId(),
    name: sheet.getName(),
  });
  const properties = () => PropertiesService.getDocumentProperties();
  return {
    tabs: () => whole(spreadsheet.getSheets(), spreadsheet.getNumSheets()).map(tabOf),
    values: (tabId) => {
      const range = sheetOf(tabId).getDataRange();
      return clock.shown(wholeRows(range.getValues(), range)) as unknown[][];
    },
    formulas: (tabId) => {
      const range = sheetOf(tabId).getDataRange();
      return wholeRows(range.getFormulas(), range).map((row) =>
        row.map((formula) => language.plain(formula)),
      );
    },
    write: (tabId, { row, column, values }) => {
      const width = values[0]?.length ?? 0;
      if (width === 0) return;
      const sheet = sheetOf(tabId);
      roomFor(sheet, row + values.length - 1, column + width - 1);
      const range = sheet.getRange(row, column, values.length, width);
      const formats = range.getNumberFormats();
      range.setValues(
        values.map((line, i) =>
          line.map((value, j) => asWritten(value, formats[i]?.[j] === "@", { clock, language })),
        ),
      );
    },
    decimalMark: () => language.decimalMark(),
    addTab: (name) => tabOf(spreadsheet.insertSheet(name, spreadsheet.getSheets().length)),
    dress: (tabId, headingRow, widths, fromColumn = 1) => {
      const sheet = sheetOf(tabId);
      if (fromColumn === 1) sheet.setFrozenRows(headingRow);
      if (widths.length > 0) {
        sheet.getRange(headingRow, fromColumn, 1, widths.length).setFontWeight("bold");
        const rows = sheet.getMaxRows() - headingRow + 1;
        sheet.getRange(headingRow, fromColumn, rows, widths.length).setWrap(true);
        // A row too low for its text shows how it begins, not how it ends.
        if (rows > 1) {
          sheet
            .getRange(headingRow + 1, fromColumn, rows - 1, widths.length)
            .setVerticalAlignment("top");
        }
      }
      widths.forEach((pixels, at) => {
        sheet.setColumnWidth(fromColumn + at, pixels);
      });
    },
    keepInView: (tabId, columns) => {
      sheetOf(tabId).setFrozenColumns(columns);
    },
    isPlain: (tabId, column, fromRow) => {
      const sheet = sheetOf(tabId);
      const rows = Math.max(1, sheet.getLastRow() - fromRow + 1);
      const grounds = sheet.getRange(fromRow, column, rows, 1).getBackgrounds();
      return grounds.every(([ground]) => ground === "#ffffff");
    },
    paint: (tabId, column, fromRow, colour) => {
      const sheet = sheetOf(tabId);
      const rows = sheet.getMaxRows() - fromRow + 1;
      sheet.getRange(fromRow, column, rows, 1).setBackground(colour);
    },
    select: (tabId, range) => {
      sheetOf(tabId).getRange(range).activate();
    },
    highlights: (tabId) => ownRules(sheetOf(tabId)).map((rule) => language.plain(formulaOf(rule))),
    highlight: (tabId, highlights) => {
      const sheet = sheetOf(tabId);
      const coaches = sheet.getConditionalFormatRules().filter((rule) => !isOurs(rule));
      const ours = highlights.map((one) =>
        ruleOf(sheet, { ...one, formula: language.written(one.formula) }),
      );
      sheet.setConditionalFormatRules([...coaches, ...ours]);
    },
    offer: (tabId, range, values) => {
      const rule = SpreadsheetApp.newDataValidation()
        .requireValueInList([...values], true)
        .setAllowInvalid(true)
        .build();
      sheetOf(tabId).getRange(range).setDataValidation(rule);
    },
    format: (tabId, range, pattern) => {
      sheetOf(tabId).getRange(range).setNumberFormat(pattern);
    },
    alignLeft: (tabId, range) => {
      sheetOf(tabId).getRange(range).setHorizontalAlignment("left");
    },
    warn: (tabId, range, reason) => {
      const sheet = sheetOf(tabId);
      const there = sheet
        .getProtections(SpreadsheetApp.ProtectionType.RANGE)
        .some((one) => one.getDescription() === reason);
      if (!there) sheet.getRange(range).protect().setDescription(reason).setWarningOnly(true);
    },
    tagColumn: (tabId, column, tag) => {
      const sheet = sheetOf(tabId);
      const [letters] = sheet.getRange(1, column).getA1Notation().split(/\d/);
      // Only whole columns take a tag, and "C:C" is one whatever the number of rows.
      sheet.getRange(`${letters}:${letters}`).addDeveloperMetadata(columnTag, tag);
    },
    taggedColumns: (tabId) => {
      const places = new Map<string, number>();
      for (const tag of columnTags(sheetOf(tabId))) {
        const column = tag.getLocation().getColumn()?.getColumn();
        if (column !== undefined) places.set(String(tag.getValue()), column);
      }
      return places;
    },
    untagColumn: (tabId, tag) => {
      for (const one of columnTags(sheetOf(tabId))) if (one.getValue() === tag) one.remove();
    },
    recall: (key) => properties().getProperty(key) || null,
    recallAll: () => {
      const store = properties();
      const all = store.getProperties();
      whole(Object.keys(all), store.getKeys().length);
      return all;
    },
    remember: (texts) => {
      properties().setProperties(texts);
    },
    forget: (keys) => {
      // The platform deletes one at a time, and a call takes its time: an empty text is none here.
      if (keys.length > 0)
        properties().setProperties(Object.fromEntries(keys.map((key) => [key, ""])));
    },
    alone: (work) => {
      const lock = LockService.getDocumentLock();
      if (!lock.tryLock(patienceMs)) {
        throw new Error(spreadsheetWords.otherCoachWrites);
      }
      try {
        const answer = work();
        // What another coach reads next must be what was written here.
        SpreadsheetApp.flush();
        return answer;
      } finally {
        lock.releaseLock();
      }
    },
  };
}

/** The list, when it is as long as the platform says: what is written rests on all of it. */
function whole<One>(list: One[], length: number): One[] {
  if (list.length !== length) {
    throw new Error(spreadsheetWords.answeredInPart);
  }
  return list;
}

function wholeRows<Cell>(rows: Cell[][], range: GoogleAppsScript.Spreadsheet.Range): Cell[][] {
  const columns = range.getNumColumns();
  for (const row of whole(rows, range.getNumRows())) whole(row, columns);
  return rows;
}

const columnTag = "holdline column";

function columnTags(sheet: GoogleAppsScript.Spreadsheet.Sheet) {
  return sheet
    .createDeveloperMetadataFinder()
    .withKey(columnTag)
    .withLocationType(SpreadsheetApp.DeveloperMetadataLocationType.COLUMN)
    .find();
}

/**
 * Text that the platform would take for a formula, a number or a date stays the text it is. A cell of
 * plain text keeps whatever comes, a leading apostrophe included.
 */
function asWritten(
  value: Written,
  plainText: boolean,
  { clock, language }: { readonly clock: SheetClock; readonly language: SheetLanguage },
): string | number | boolean | Date {
  if (typeof value === "string") return value === "" || plainText ? value : `'${value}`;
  if (typeof value !== "object") return value;
  if ("formula" in value) return language.written(value.formula);
  const [year, month, date] = value.day.split("-").map(Number);
  return clock.startOf(year!, month!, date!);
}

/** The platform refuses a range past the tab's edge: make room first. */
function roomFor(sheet: GoogleAppsScript.Spreadsheet.Sheet, rows: number, columns: number): void {
  const missingRows = rows - sheet.getMaxRows();
  if (missingRows > 0) sheet.insertRowsAfter(sheet.getMaxRows(), missingRows);
  const missingColumns = columns - sheet.getMaxColumns();
  if (missingColumns > 0) sheet.insertColumnsAfter(sheet.getMaxColumns(), missingColumns);
}

function ruleOf(
  sheet: GoogleAppsScript.Spreadsheet.Sheet,
  { range, formula, background, colour, bold, italic }: Highlight,
): GoogleAppsScript.Spreadsheet.ConditionalFormatRule {
  let builder = SpreadsheetApp.newConditionalFormatRule()
    .whenFormulaSatisfied(formula)
    .setFontColor(colour);
  if (background !== undefined) builder = builder.setBackground(background);
  if (bold) builder = builder.setBold(true);
  if (italic) builder = builder.setItalic(true);
  return builder.setRanges([sheet.getRange(range)]).build();
}

/** Our rules look for our words; a coach's rule with a formula of that very shape is not likely. */
function isOurs(rule: GoogleAppsScript.Spreadsheet.ConditionalFormatRule): boolean {
  return /^=(AND\(LEN\(A1\)<32[,;]OR\(ISNUMBER\(SEARCH\(|ISNUMBER\(SEARCH\("too few rows"[,;]A1\)\)$)/.test(
    formulaOf(rule),
  );
}

function ownRules(sheet: GoogleAppsScript.Spreadsheet.Sheet) {
  return sheet.getConditionalFormatRules().filter(isOurs);
}

function formulaOf(rule: GoogleAppsScript.Spreadsheet.ConditionalFormatRule): string {
  return String(rule.getBooleanCondition()?.getCriteriaValues()[0] ?? "");
}
