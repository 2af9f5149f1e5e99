import { type Day, isoFromDay, mondayOf } from "../../../coaching/calendar/day";
import { plainWords } from "../../header/header-words";
import { isBlank } from "../../value/blank";
import { speedList } from "../../value/speed-list";
import { unitOf } from "../../value/units";
import type { LayoutContext } from "../layout-context";
import { liftInWords } from "../lift-in-words";
import { emitSets } from "../shorthand/emit-sets";
import { fullOrder, orderFromWords, type SchemeOrder } from "../shorthand/scheme-order";
import { type SetGroup, setCell } from "../shorthand/set-cell";
import { figuresFor } from "../shorthand/spread-speeds";
import { type Placed, Unfolded } from "../unfolded";
import { type Block, type BlockRow, blocksOf } from "./block-rows";
import { dateHeaders } from "./date-header";

/** One row an athlete, dates across, sets in shorthand or in columns under each date. Null when it is not that. */
export function unfoldWideSets(context: LayoutContext): Unfolded | null {
  const headers = dateHeaders(context);
  if (headers.length === 0) return null;
  const into = new Unfolded("Sets", context.cells, headers[0]?.firstRow ?? 0);
  for (const block of blocksOf(context, headers, into)) {
    for (const { row, column, code, facts } of block.header.unsettled)
      into.report(code, row, column, facts);
    const titles = [...block.titles, context.title];
    const words = plainWords(titles.join(" | "));
    const order = fullOrder(titles.map(orderFromWords).find((parts) => parts !== null) ?? null);
    const pounds = /\blbs?\b/.test(words) && !/\bkg\b/.test(words);
    into.describe("load", {
      unit: pounds ? unitOf("lb") : /\bkg\b/.test(words) ? unitOf("kg") : null,
      heading: "load",
      words: "load",
    });
    into.describe("speed", {
      heading: "speed",
      words: /\b(best|fastest) rep\b/.test(words)
        ? "best speed"
        : /\bmean\b/.test(words)
          ? "mean speed"
          : "speed",
    });
    const lift = titles.map(liftInWords).find((found) => found !== null) ?? null;
    if (lift === null && !block.known.has("exercise")) {
      into.report("exercise-missing", block.header.firstRow, 0);
      into.mark(block.header.firstRow, "heading");
      for (const { row } of block.rows) into.mark(row, "reported");
      continue;
    }
    for (const athleteRow of block.rows) unfoldRow(context, into, block, athleteRow, order, lift);
  }
  return into;
}

function unfoldRow(
  { cells }: LayoutContext,
  into: Unfolded,
  block: Block,
  { row, athlete, nameColumn }: BlockRow,
  order: SchemeOrder | null,
  lift: string | null,
): void {
  const line = cells[row] ?? [];
  const liftColumn = block.known.get("exercise");
  const exercise: Placed =
    liftColumn !== undefined && !isBlank(line[liftColumn])
      ? [line[liftColumn], liftColumn]
      : [lift ?? "", nameColumn];
  into.mark(row, "data");
  for (const { column, monday } of block.header.noteColumns)
    if (!isBlank(line[column]))
      into.note(row, column, athlete, monday, "week", String(line[column]).trim());
  const done = new Map<Day, readonly SetGroup[]>();
  let left: readonly SetGroup[] | null = null;
  const byDay = new Map<Day, { column: number; field: string }[]>();
  for (const { column, day, field } of block.header.days) {
    if (field !== null) {
      byDay.set(day, [...(byDay.get(day) ?? []), { column, field }]);
      continue;
    }
    const said = setCell(line[column], order);
    let groups: readonly SetGroup[] | null = null;
    let speeds: readonly (number | null)[] = [];
    let note = "";
    if (said.is === "sets") ({ groups, speeds, note } = said);
    else if (said.is === "ditto") groups = left;
    else if (said.is === "as-weekday") groups = lastOn(done, said.weekday, day);
    else if (said.is === "none") {
      into.note(row, column, athlete, day, "day", said.note);
      continue;
    }
    if (groups === null) {
      const codes = {
        ditto: "nothing-to-repeat",
        "as-weekday": "nothing-to-repeat",
        "order-unsettled": "scheme-order-unsettled",
      };
      into.report(codes[said.is as keyof typeof codes] ?? "scheme-unread", row, column);
      into.mark(row, "data");
      continue;
    }
    left = groups;
    done.set(day, groups);
    const shared = {
      day: [isoFromDay(day), column] as const,
      athlete: [athlete, nameColumn] as const,
      exercise,
    };
    const place = {
      row,
      schemeColumn: column,
      speedColumn: column,
      shared,
      note: note === "" ? undefined : ([note, column] as const),
    };
    if (!emitSets(into, place, groups, speeds, null)) into.report("speeds-unsettled", row, column);
  }
  for (const [day, columns] of byDay)
    columnsOfDay(into, line, row, athlete, nameColumn, exercise, day, columns, order);
}

/** Load, speed and the rest in columns of their own under one date. */
function columnsOfDay(
  into: Unfolded,
  line: readonly unknown[],
  row: number,
  athlete: string,
  nameColumn: number,
  exercise: Placed,
  day: Day,
  columns: readonly { column: number; field: string }[],
  order: SchemeOrder | null,
): void {
  const filled = columns.filter(({ column }) => !isBlank(line[column]));
  if (filled.length === 0) return;
  const at = new Map(filled.map(({ field, column }) => [field, column]));
  const shared: Record<string, Placed | undefined> = {
    day: [isoFromDay(day), filled[0]?.column ?? 0],
    athlete: [athlete, nameColumn],
    exercise,
  };
  const scheme = at.get("scheme") ?? at.get("load");
  const said = scheme === undefined ? null : setCell(line[scheme], order);
  const speedAt = at.get("speed");
  const listed =
    speedAt === undefined || typeof line[speedAt] !== "string"
      ? null
      : speedList(line[speedAt] as string);
  if (
    said?.is === "sets" &&
    typeof line[scheme ?? 0] === "string" &&
    said.groups[0]?.reps !== null &&
    at.get("reps") === undefined
  ) {
    const speeds =
      said.speeds.length > 0
        ? said.speeds
        : (listed?.speeds ??
          (typeof line[speedAt ?? -1] === "number" ? [line[speedAt ?? -1] as number] : []));
    const place = {
      row,
      schemeColumn: scheme ?? 0,
      speedColumn: speedAt ?? scheme ?? 0,
      shared,
      note: undefined,
    };
    if (!emitSets(into, place, said.groups, speeds, figuresFor("")))
      into.report("speeds-unsettled", row, scheme ?? 0);
    return;
  }
  if (said?.is === "none" && at.size === 1) {
    into.note(row, scheme ?? 0, athlete, day, "day", said.note);
    return;
  }
  for (const [field, column] of at) shared[field] ??= [line[column], column];
  into.emit(row, shared);
}

/** The groups of the session of that weekday earlier in the same week; null when there was none. */
export function lastOn(
  done: ReadonlyMap<Day, readonly SetGroup[]>,
  weekday: number,
  day: Day,
): readonly SetGroup[] | null {
  const meant = mondayOf(day) + weekday;
  return meant < day ? (done.get(meant) ?? null) : null;
}
