import type { GridEngine } from "../engine/grid-engine";
import { splitTabMemory } from "../engine/tab-memory";
import { ConditionalFormatRuleBuilder } from "./conditional-format-rule";
import { DataValidationBuilder } from "./data-validation";
import { documentLock } from "./document-lock";
import { htmlService } from "./html-service";
import { locationTypes } from "./metadata-finder";
import { memoryCache, PropertyStore } from "./property-store";
import type { ServiceCalls } from "./service-calls";
import { type MenuItem, type ShellHooks, Spreadsheet } from "./spreadsheet";

/**
 * The services a script finds as globals, as far as this add-on uses them: what the platform refuses
 * is refused, and what it does not know is not here.
 */
export function platformServices(given: {
  readonly engine: () => GridEngine;
  readonly calls: ServiceCalls;
  readonly hooks: ShellHooks;
  readonly files: Readonly<Record<string, string>>;
  readonly properties: Readonly<Record<string, string>>;
  readonly propertiesChanged: () => void;
}) {
  const { calls, hooks } = given;
  const memory = splitTabMemory(given.properties);
  let open: Spreadsheet | null = null;
  const plainSpreadsheet = (): Spreadsheet => {
    open ??= new Spreadsheet(given.engine(), calls, hooks, memory.tabs);
    return open;
  };
  const spreadsheet = () => calls.counted("Spreadsheet", plainSpreadsheet());
  const documentProperties = new PropertyStore(memory.seen, given.propertiesChanged);
  const userProperties = new PropertyStore({});
  const cache = memoryCache();
  const { lock, runStarted, runEnded } = documentLock();
  const menu = (title: string) => {
    const items: MenuItem[] = [];
    const made = {
      addItem(label: string, functionName: string) {
        items.push({ label, functionName });
        return made;
      },
      addSeparator: () => made,
      addToUi: () => hooks.menu?.(title, items),
    };
    return made;
  };
  const ui = {
    createMenu: menu,
    createAddonMenu: () => menu("Holdline"),
    showSidebar: (page: { getTitle(): string; getContent(): string }) =>
      hooks.sidebar?.(page.getTitle(), page.getContent()),
    alert: (message: string) => hooks.alert?.(message),
  };
  const globals = {
    SpreadsheetApp: {
      getActive: spreadsheet,
      getActiveSpreadsheet: spreadsheet,
      getActiveSheet: () => spreadsheet().getActiveSheet(),
      flush: () => {},
      getUi: () => calls.counted("Ui", ui),
      newConditionalFormatRule: () => new ConditionalFormatRuleBuilder(),
      ProtectionType: { RANGE: "RANGE", SHEET: "SHEET" },
      DeveloperMetadataLocationType: locationTypes,
      newDataValidation: () => new DataValidationBuilder(),
    },
    HtmlService: htmlService(given.files),
    PropertiesService: {
      getDocumentProperties: () => calls.counted("Properties", documentProperties),
      getUserProperties: () => calls.counted("Properties", userProperties),
    },
    CacheService: { getDocumentCache: () => cache },
    LockService: { getDocumentLock: () => calls.counted("Lock", lock) },
    Session: { getActiveUserLocale: () => "en-GB" },
  };
  return {
    globals: Object.fromEntries(
      Object.entries(globals).map(([name, service]) => [name, calls.counted(name, service)]),
    ),
    spreadsheet,
    /** The same without counting, for the host's own reading. */
    plainSpreadsheet,
    runStarted,
    runEnded,
    properties: () => documentProperties.getProperties(),
  };
}
