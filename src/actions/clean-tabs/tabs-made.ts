import * as z from "zod/mini";
import { tableNames } from "../../rows/table-name";
import type { Workbook } from "../workbook";

const key = "clean tabs";
const tabMade = z.object({
  table: z.enum(tableNames),
  /** The name it was to have; its id once it is there. */
  name: z.string(),
  tabId: z.nullable(z.int()),
  done: z.boolean(),
});
const list = z.array(tabMade);

/** A tab that was made here, or begun: it is remembered before it is added, so none is begun twice. */
export type TabMade = z.infer<typeof tabMade>;

export function tabsMade(workbook: Workbook): readonly TabMade[] {
  const text = workbook.recall(key);
  if (text === null) return [];
  try {
    return list.parse(JSON.parse(text));
  } catch {
    // Of another version, or edited by hand: then no tab counts as ours and none is touched.
    return [];
  }
}

/** Remembers a tab in place of what was remembered of its table. */
export function rememberTab(workbook: Workbook, made: TabMade): void {
  const others = tabsMade(workbook).filter(({ table }) => table !== made.table);
  workbook.remember({ [key]: JSON.stringify([...others, made]) });
}
