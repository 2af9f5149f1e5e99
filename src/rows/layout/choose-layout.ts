import { findHeader, missingOf } from "../header/find-header";
import { IssueLog } from "../issue-log";
import type { TableView } from "../table-view";
import { isBlank } from "../value/blank";
import { hasHeadedGroups } from "./across/headed-groups";
import { countsSets } from "./counts-sets";
import { expandSchemes } from "./expand-schemes";
import type { LayoutContext } from "./layout-context";
import { unfoldSections } from "./sections/unfold-sections";
import { noSense } from "./shorthand/scheme-order";
import { isShorthand, setCell } from "./shorthand/set-cell";
import type { Unfolded } from "./unfolded";
import { namesAnybody } from "./wide/grid-blocks";
import { hasNumberedTries } from "./wide/numbered-tries";
import { unfoldDiaryRunners } from "./wide/unfold-diary-runners";
import { unfoldRaceRunners } from "./wide/unfold-race-runners";
import { unfoldWideAvailability } from "./wide/unfold-wide-availability";
import { unfoldWideDiary } from "./wide/unfold-wide-diary";
import { unfoldWideJumps } from "./wide/unfold-wide-jumps";
import { unfoldWideRaces } from "./wide/unfold-wide-races";
import { unfoldWideRuns } from "./wide/unfold-wide-runs";
import { unfoldWideSets } from "./wide/unfold-wide-sets";
import { unfoldWideTests } from "./wide/unfold-wide-tests";

export type LayoutName =
  | "plain rows"
  | "rows of several sets"
  | "dates across"
  | "tests across"
  | "runners across"
  | "blocks one under another"
  | "not recognised";

/** With nothing unfolded the rows are plain, whatever they were looked through for. */
export type ChosenLayout = { readonly name: LayoutName; readonly unfolded: Unfolded | null };

const plain: ChosenLayout = { name: "plain rows", unfolded: null };

/** How the table lies in the range; plain rows when its header names all that is needed. */
export function chooseLayout(
  context: LayoutContext,
  view: TableView | null,
  missing: readonly string[],
  unknown: readonly number[],
): ChosenLayout {
  const { table } = context;
  if (table === "Runs" && missing.length > 0)
    return { name: "dates across", unfolded: unfoldWideRuns(context) };
  if (table === "Diary" && missing.length > 0) {
    const across = view === null ? null : unfoldDiaryRunners(view, context);
    return across === null
      ? { name: "dates across", unfolded: unfoldWideDiary(context) }
      : { name: "runners across", unfolded: across };
  }
  if (table === "Sets" && hasHeadedGroups(context.cells, context.end))
    return { name: "blocks one under another", unfolded: unfoldSections(context) };
  if (table === "Races" && missing.length > 0)
    return { name: "dates across", unfolded: unfoldWideRaces(context) };
  if (table === "Availability" && missing.length > 0)
    return { name: "dates across", unfolded: unfoldWideAvailability(context) };
  const complete = missing.length === 0 ? view : null;
  if (table === "Races" && complete !== null)
    return { name: "runners across", unfolded: unfoldRaceRunners(complete, unknown) };
  if (table !== "Sets" && table !== "Jumps") return plain;
  if (complete !== null && table === "Sets" && isSchemeLog(complete))
    return { name: "rows of several sets", unfolded: expandSchemes(complete, "Sets", context.tab) };
  const ofJumps = table === "Jumps" && complete !== null && setsView(context) === null;
  if (ofJumps && hasNumberedTries(complete)) {
    const tries = unfoldWideTests(complete, table, unknown, context);
    if (tries !== null) return { name: "tests across", unfolded: tries };
  }
  if (complete !== null && (table === "Sets" || jumpFigures.some((one) => one in complete.fields)))
    return plain;
  if (table === "Jumps") {
    const log = setsView(context);
    if (log !== null && isSchemeLog(log))
      return { name: "rows of several sets", unfolded: expandSchemes(log, "Jumps", context.tab) };
    if (complete !== null && hasHeadedGroups(context.cells, context.end))
      return { name: "blocks one under another", unfolded: unfoldSections(context) };
    if (complete !== null) return plain;
  }
  const wide = table === "Sets" ? unfoldWideSets(context) : unfoldWideJumps(context);
  const grid = { name: "dates across", unfolded: wide } as const;
  // Two days beside one another in a tab of blocks do not make it a grid.
  const ofNobody = wide?.isEmpty === true && !namesAnybody(context);
  if (wide !== null && !ofNobody) return grid;
  if (view?.fields.day !== undefined && view.fields.athlete !== undefined) {
    const tests = unfoldWideTests(view, table, unknown, context);
    if (tests !== null) return { name: "tests across", unfolded: tests };
  }
  const sections = unfoldSections(context);
  if (ofNobody && (sections?.isEmpty ?? true)) return grid;
  return { name: "blocks one under another", unfolded: sections };
}

/** Columns of which a plain row of jumps has one; without any, its figures stand in a log of sets. */
const jumpFigures = ["height", "stack", "contact", "flight"];

/** Sets in shorthand, or a column that counts how many sets a row stands for. */
function isSchemeLog({ cells, fields, first, end }: TableView): boolean {
  if (fields.scheme !== undefined) return true;
  const load = fields.load!.index;
  let filled = 0;
  let shorthand = 0;
  for (let row = first; row < Math.min(end, first + 200); row++) {
    const cell = cells[row]![load];
    if (isBlank(cell)) continue;
    filled++;
    if (isShorthand(setCell(cell, noSense))) shorthand++;
  }
  if (filled > 0 && shorthand >= filled / 2) return true;
  return (
    fields.setCount !== undefined &&
    fields.set === undefined &&
    countsSets(cells, fields.setCount.index, first, end)
  );
}

/** The same range seen as a log of sets, for the jumps kept among them. */
function setsView(context: LayoutContext): TableView | null {
  const { cells, end } = context;
  const found = findHeader("Sets", cells, end);
  if (found === null || missingOf("Sets", found.fields).length > 0) return null;
  const { row: headerRow, first, fields, repColumns } = found;
  return {
    table: "Sets",
    cells,
    headerRow,
    first,
    end,
    fields,
    repColumns,
    year: null,
    log: new IssueLog("Sets"),
  };
}
