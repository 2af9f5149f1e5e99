import type { OpenHost } from "../../src/local-host/open-host";
import { type CellData, plainTab, type WorkbookData } from "../../src/local-host/workbook-data";
import { local } from "./built";
import { fixtureScript } from "./fixture-script";

const open: OpenHost[] = [];

/** A host on a workbook, with the small script unless another is given; gone after each test. */
export async function opened(
  tabs: Readonly<Record<string, readonly (readonly unknown[])[]>>,
  more: Partial<WorkbookData> & { bundleSource?: string; hooks?: object } = {},
): Promise<OpenHost> {
  const { bundleSource = fixtureScript, hooks, ...parts } = more;
  const host = await local.openHost({
    workbook: {
      name: "Quillbeck",
      tabs: Object.entries(tabs).map(([name, rows]) =>
        plainTab(
          name,
          rows.map((row) => row.map(cell)),
        ),
      ),
      names: [],
      properties: {},
      ...parts,
    },
    bundleSource,
    files: { Sidebar: "<p>Squad</p>" },
    ...(hooks && { hooks }),
  });
  open.push(host);
  return host;
}

afterEach(() => {
  for (const host of open.splice(0)) host.dispose();
});

function cell(value: unknown): CellData | null {
  if (value === null) return null;
  if (typeof value === "object") return value as CellData;
  if (typeof value === "string" && value.startsWith("=")) return { value: null, formula: value };
  return { value: value as string | number | boolean };
}

/** A day as the grid keeps it: its serial number with a date's format. */
export const day = (serial: number): CellData => ({ value: serial, format: "yyyy-mm-dd" });
