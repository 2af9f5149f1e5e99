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
  const complete = missing.length === 0 ? view : null;
  const given = { context, view, complete, unknown };
  switch (context.table) {
    case "Runs":
      return complete === null ? datesAcross(unfoldWideRuns(context)) : plain;
    case "Availability":
      return complete === null ? datesAcross(unfoldWideAvailability(context)) : plain;
    case "Diary":
      return complete === null ? diaryLayout(given) : plain;
    case "Races":
      return complete === null
        ? datesAcross(unfoldWideRaces(context))
        : { name: "runners across", unfolded: unfoldRaceRunners(complete, unknown) };
    case "Sets":
      return setsLayout(given);
    case "Jumps":
      return jumpsLayout(given);
    default:
      return plain;
  }
}

type Given = {
  readonly context: LayoutContext;
  readonly view: TableView | null;
  /** The view where it has all that the table needs. */
  readonly complete: TableView | null;
  /** Columns without a meaning of their own. */
  readonly unknown: readonly number[];
};

const datesAcross = (unfolded: Unfolded | null): ChosenLayout => ({
  name: "dates across",
  unfolded,
});
const blocks = (context: LayoutContext): ChosenLayout => ({
  name: "blocks one under another",
  unfolded: unfoldSections(context),
});

function diaryLayout({ context, view }: Given): ChosenLayout {
  const runners = view === null ? null : unfoldDiaryRunners(view, context);
  return runners === null
    ? datesAcross(unfoldWideDiary(context))
    : { name: "runners across", unfolded: runners };
}

function setsLayout(given: Given): ChosenLayout {
  const { context, complete } = given;
  if (hasHeadedGroups(context.cells, context.end)) return blocks(context);
  if (complete === null) return gridOrBlocks(given, unfoldWideSets(context));
  if (!isSchemeLog(complete)) return plain;
  return { name: "rows of several sets", unfolded: expandSchemes(complete, "Sets", context.tab) };
}

function jumpsLayout(given: Given): ChosenLayout {
  const { context, complete, unknown } = given;
  const log = setsView(context);
  if (complete !== null && log === null && hasNumberedTries(complete)) {
    const tries = unfoldWideTests(complete, "Jumps", unknown, context);
    if (tries !== null) return { name: "tests across", unfolded: tries };
  }
  if (complete !== null && jumpFigures.some((one) => one in complete.fields)) return plain;
  if (log !== null && isSchemeLog(log))
    return { name: "rows of several sets", unfolded: expandSchemes(log, "Jumps", context.tab) };
  if (complete === null) return gridOrBlocks(given, unfoldWideJumps(context));
  return hasHeadedGroups(context.cells, context.end) ? blocks(context) : plain;
}

/** Sets or jumps without all the headings they need: days across, tests across or blocks. */
function gridOrBlocks({ context, view, unknown }: Given, wide: Unfolded | null): ChosenLayout {
  // Two days beside one another in a tab of blocks do not make it a grid.
  const ofNobody = wide?.isEmpty === true && !namesAnybody(context);
  if (wide !== null && !ofNobody) return datesAcross(wide);
  if (view?.fields.day !== undefined && view.fields.athlete !== undefined) {
    const table = context.table === "Sets" ? "Sets" : "Jumps";
    const tests = unfoldWideTests(view, table, unknown, context);
    if (tests !== null) return { name: "tests across", unfolded: tests };
  }
  const sections = blocks(context);
  const nothing = sections.unfolded?.isEmpty ?? true;
  return ofNobody && nothing ? datesAcross(wide) : sections;
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
