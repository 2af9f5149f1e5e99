import { plainTab, type WorkbookData } from "../../../src/local-host/workbook-data";
import { chance } from "./chance";

const [rows, columns, letters] = [40, 5, 800];

/** A workbook whose every cell names its version, so that a mixture of two cannot pass for one. */
export function versionOf(version: number): WorkbookData {
  const cells = Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column) => ({
      value: `${version} ${scrambled(version * 1000 + row * columns + column)}`,
    })),
  );
  return { name: "Log", tabs: [plainTab("Sets", cells)], names: [], properties: {} };
}

/** Letters that hardly pack, so that a small workbook makes a file that takes a while to write. */
function scrambled(seed: number): string {
  const random = chance(seed);
  return Array.from({ length: letters }, () => Math.floor(random() * 36).toString(36)).join("");
}

/** The one version a workbook holds, whole; null for a part of one or a mixture. */
export function wholeVersion({ tabs }: WorkbookData): number | null {
  const version = Number.parseInt(String(tabs[0]?.cells[0]?.[0]?.value), 10);
  if (!Number.isInteger(version)) return null;
  const [wanted] = versionOf(version).tabs;
  const cells = tabs[0]!.cells.map((line) => line.map((cell) => cell?.value));
  const same =
    JSON.stringify(cells) ===
    JSON.stringify(wanted!.cells.map((line) => line.map((cell) => cell!.value)));
  return tabs.length === 1 && same ? version : null;
}
