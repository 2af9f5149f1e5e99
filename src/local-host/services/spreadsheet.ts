import type { FWorksheet } from "@univerjs/sheets/facade";
import { columnLetters } from "../a1";
import type { GridEngine } from "../engine/grid-engine";
import { usualTab } from "../engine/snapshot";
import type { TabMemory } from "../engine/tab-memory";
import { keptProtection, placedProtection, shiftedProtections } from "./kept-protections";
import { keptTag, movedTags, placedTag, shiftedTags, topOfColumn } from "./placed-tags";
import type { Range } from "./range";
import type { ServiceCalls } from "./service-calls";
import { Sheet } from "./sheet";
import type { TabExtras } from "./sheet-inside";

/** What the page does for the platform's Ui; headless, nothing. */
export type ShellHooks = {
  readonly toast?: (message: string, title: string) => void;
  readonly menu?: (title: string, items: readonly MenuItem[]) => void;
  readonly sidebar?: (title: string, html: string) => void;
  readonly alert?: (message: string) => void;
  /** A script has gone to some cells. */
  readonly selected?: () => void;
};
export type MenuItem = { readonly label: string; readonly functionName: string };

/** The platform's Spreadsheet: the open workbook. */
export class Spreadsheet {
  readonly inside: SpreadsheetInside;

  constructor(
    engine: GridEngine,
    calls: ServiceCalls,
    hooks: ShellHooks,
    memory: readonly TabMemory[],
  ) {
    this.inside = new SpreadsheetInside(this, engine, calls, hooks, memory);
  }

  getId(): string {
    return this.inside.engine.unitId;
  }
  getName(): string {
    return this.inside.engine.book.getName();
  }
  getSpreadsheetTimeZone(): string {
    return Intl.DateTimeFormat().resolvedOptions().timeZone;
  }
  getSpreadsheetLocale(): string {
    return "en_GB";
  }
  getSheets(): Sheet[] {
    return this.inside.engine.book.getSheets().map((grid) => this.inside.sheet(grid));
  }
  getNumSheets(): number {
    return this.inside.engine.book.getSheets().length;
  }
  getSheetByName(name: string): Sheet | null {
    const grid = this.inside.engine.book.getSheetByName(name);
    return grid ? this.inside.sheet(grid) : null;
  }
  getSheetById(id: number): Sheet | null {
    return this.getSheets().find((sheet) => sheet.getSheetId() === id) ?? null;
  }
  getActiveSheet(): Sheet {
    return this.inside.sheet(this.inside.engine.book.getActiveSheet());
  }
  setActiveSheet(sheet: Sheet): Sheet {
    return sheet.activate();
  }
  getActiveRange(): Range | null {
    const range = this.inside.engine.book.getActiveRange();
    return range ? this.getActiveSheet().getRange(range.getA1Notation()) : null;
  }
  insertSheet(name: string, index?: number): Sheet {
    if (this.inside.engine.book.getSheetByName(name)) {
      throw new Error(`A sheet with the name "${name}" already exists. Please enter another name.`);
    }
    const at = { ...(index !== undefined && { index }), sheet: usualTab };
    return this.inside.sheet(this.inside.engine.book.create(name, 1000, 26, at));
  }
  deleteSheet(sheet: Sheet): void {
    this.inside.engine.book.deleteSheet(sheet.inside.grid);
  }
  setNamedRange(name: string, range: Range): void {
    const { book } = this.inside.engine;
    if (book.getDefinedName(name)) book.deleteDefinedName(name);
    const tab = `'${range.getSheet().getName().replace(/'/g, "''")}'`;
    const whole = range.getRow() === 1 && range.getNumRows() >= range.getSheet().getMaxRows();
    const [from, to] = [range.getColumn() - 1, range.getLastColumn() - 1].map(columnLetters);
    book.insertDefinedName(
      name,
      whole
        ? `${tab}!$${from}:$${to}`
        : `${tab}!$${from}$${range.getRow()}:$${to}$${range.getLastRow()}`,
    );
  }
  toast(message: string, title = ""): void {
    this.inside.hooks.toast?.(message, title);
  }
}

class SpreadsheetInside {
  private readonly extras = new Map<string, TabExtras>();
  private readonly numbers = new Map<string, number>();

  constructor(
    private readonly spreadsheet: Spreadsheet,
    readonly engine: GridEngine,
    private readonly calls: ServiceCalls,
    readonly hooks: ShellHooks,
    memory: readonly TabMemory[],
  ) {
    for (const { tab, number, tags, protections = [] } of memory) {
      const grid = engine.book.getSheetByName(tab);
      if (!grid) continue;
      const size = { rows: grid.getMaxRows(), columns: grid.getMaxColumns() };
      this.numbers.set(grid.getSheetId(), number);
      const extras = this.extrasOf(grid.getSheetId());
      extras.tags = tags.flatMap((tag) => placedTag(tag, size, topOfColumn(grid)));
      extras.protections = protections.flatMap((one) => placedProtection(one, size));
    }
    for (const grid of engine.book.getSheets()) this.tabNumber(grid.getSheetId());
    engine.onShift((tabId, shift) => {
      const extras = this.extrasOf(tabId);
      extras.tags = shiftedTags(extras.tags, shift);
      extras.protections = shiftedProtections(extras.protections, shift);
    });
    engine.onColumnsMoved((tabId, move) => {
      const extras = this.extrasOf(tabId);
      extras.tags = movedTags(extras.tags, move);
    });
  }

  sheet(grid: FWorksheet): Sheet {
    const extras = this.extrasOf(grid.getSheetId());
    return this.calls.counted(
      "Sheet",
      new Sheet(
        this.calls.counted("Spreadsheet", this.spreadsheet),
        this.engine,
        grid,
        this.calls,
        extras,
      ),
    );
  }

  extrasOf(tabId: string): TabExtras {
    const known = this.extras.get(tabId);
    if (known) return known;
    const fresh: TabExtras = { tags: [], protections: [] };
    this.extras.set(tabId, fresh);
    return fresh;
  }

  /** The platform's tab ids are numbers, the first tab's is 0. */
  tabNumber(tabId: string): number {
    const known = this.numbers.get(tabId);
    if (known !== undefined) return known;
    const number = Math.max(-1, ...this.numbers.values()) + 1;
    this.numbers.set(tabId, number);
    return number;
  }

  tabMemory(): TabMemory[] {
    return this.engine.book.getSheets().map((grid) => {
      const { tags, protections } = this.extrasOf(grid.getSheetId());
      return {
        tab: grid.getSheetName(),
        number: this.tabNumber(grid.getSheetId()),
        tags: tags.map((tag) => keptTag(tag, topOfColumn(grid))),
        ...(protections.length > 0 && { protections: protections.map(keptProtection) }),
      };
    });
  }
}
