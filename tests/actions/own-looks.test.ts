import type { CellData, TabData, WorkbookData } from "../../src/local-host/workbook-data";
import { heldBy, openServices, type ServicesHost } from "../faults/held-by-services";
import { type Scenario, scenarios } from "../faults/writing-actions";
import { meantCells } from "./both-hosts-contract";

// What a workbook in memory has no place for: formats, looks, notes, lists and widths of the coach's
// tabs stay as they are through every request that writes.
const looks: readonly Partial<CellData>[] = [
  { note: "asked at the track" },
  { style: { bold: true, colour: "#123456", background: "#fedcba", align: "right" } },
  { style: { italic: true, wrap: true } },
  { format: "0.00" },
];
/** A look for every cell, and each kind of thing a coach may have set in a tab. */
const dressed = (tab: TabData, at: number): TabData => ({
  ...tab,
  cells: tab.cells.map((row, i) =>
    row.map((cell, j) => ({ value: null, ...cell, ...looks[(at + i + j) % looks.length] })),
  ),
  frozenRows: 2,
  frozenColumns: 1,
  columnWidths: [222, null, 77],
  rowHeights: { 0: 41 },
  validations: [{ range: "A2:A4", values: ["one", "two"], refusesOthers: false, help: "pick" }],
  conditionalFormats: [
    { ranges: ["A1:B9"], formula: '=A1="injured"', background: "#ffeeee", bold: true },
  ],
});

let host: ServicesHost;
let names: readonly string[];
beforeAll(async () => {
  host = await openServices();
  const plain = host.workbook();
  names = plain.tabs.map(({ name }) => name);
  await reopened({ ...plain, tabs: plain.tabs.map(dressed) });
});
afterAll(() => host.dispose());

async function reopened(left: WorkbookData): Promise<void> {
  host.dispose();
  host = await openServices(left);
}

/** The coach's tabs as they would be saved, but for what a request is there to change. */
function coaches(request: Scenario["request"]): TabData[] {
  const [meant = ""] = meantCells(request);
  const own = host.workbook().tabs.filter(({ name }) => names.includes(name));
  return own.map((tab) => {
    const rules = tab.conditionalFormats.slice(0, request === "highlightSquad" ? 1 : undefined);
    const cells = tab.cells.map((row, i) =>
      row.map((cell, j) => {
        if (meant !== `${tab.name} ${i + 1},${j + 1}`) return cell;
        // Words behind an apostrophe are kept as plain text.
        const { value: _, format: __, ...look } = cell ?? { value: null };
        return { value: "another", ...look };
      }),
    );
    return { ...tab, cells, conditionalFormats: rules };
  });
}

// In one workbook, one after another.
test.each(scenarios.map((one) => [`${one.request}: ${one.name}`, one] as const))(
  "%s leaves the looks of the coach's tabs alone",
  async (_, { request, prepare, message }) => {
    const spoilt: string[] = [];
    const held = heldBy(host, spoilt);
    prepare?.(held);
    const asked = message(held);
    const left = host.workbook();
    const parts = Object.fromEntries(spoilt.map((key) => [key, "3 parts"]));
    if (spoilt.length > 0)
      await reopened({ ...left, properties: { ...left.properties, ...parts } });
    const before = coaches(request);
    expect(before[0]!.cells[0]![0]).toMatchObject({ note: "asked at the track" });
    host.run(request, [asked]);
    expect(coaches(request)).toEqual(before);
  },
);
