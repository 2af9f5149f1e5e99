import { recallLong } from "../../src/actions/answers/remember-long";
import { keptMatters } from "../../src/actions/messages";
import type { Workbook } from "../../src/actions/workbook";

/**
 * What is kept with a workbook, by matter, whichever of its two places a text is kept in and whatever
 * the order in which it was said.
 */
export function rememberedIn(all: Readonly<Record<string, string>>): unknown {
  const kept = { recallAll: () => all } as Pick<Workbook, "recallAll"> as Workbook;
  return keptMatters.map((key) => {
    const found = recallLong(kept, key);
    return found.is === "text" ? ordered(JSON.parse(found.text)) : found.is;
  });
}

function ordered(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(ordered);
  if (value === null || typeof value !== "object") return value;
  const entries = Object.entries(value).map(([key, one]) => [key, ordered(one)] as const);
  return Object.fromEntries(entries.sort(([a], [b]) => (a < b ? -1 : 1)));
}
