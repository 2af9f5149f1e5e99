import type { Cells } from "../../cells";
import type { Column } from "../../header/column";
import { plainWords } from "../../header/header-words";
import { numbersAlone, oneSetARow } from "../../header/one-set-a-row";
import { namesSummary } from "../../table/read-lines";
import { setKinds } from "../../table/set-kinds";
import { liftInWords } from "../lift-in-words";
import type { Placed } from "../unfolded";
import { dateColumn, nameColumn } from "./columns-of-rows";
import { figuresOfSets } from "./figures-of-sets";
import type { HeadedGroups } from "./header-of-groups";
import { figures, type HeadingParts } from "./heading-parts";
import { athletesAmong, liftsAmong, namesLift, namesOver } from "./names-over-figures";

const ofReps = /^(?:mean|avg|average|best|fastest|max|peak|top|mittel|beste)\b/;

const ofJumps = /^(?:test|jump|jump test|kind of jump|sprung|sprungtest)$/;

type Group = { of: HeadingParts; columns: Record<string, Column>; reps: Column[] };
type Place = {
  readonly row: number;
  readonly top: number;
  readonly left: number;
  readonly end: number;
};

/** Columns by the lift or the set their headings name; null where there are not two such groups. */
export function groupsUnder(
  cells: Cells,
  { row, top, left, end }: Place,
  headings: readonly HeadingParts[],
): HeadedGroups | null {
  const numbered = headings.some(
    ({ field, set }) => /^(?:load|reps)$/.test(field ?? "") && set !== "",
  );
  const titled = headings.map((heading) => ofSet(heading, numbered));
  const right = ({ column }: HeadingParts) => column.index >= left;
  const names = namesOver(titled.filter((one) => right(one) && isCounted(one)));
  // A column of tests or jumps: what stands in sets is no load.
  if (headings.some(({ column }) => ofJumps.test(column.words))) return null;
  const hasLift = titled.some(({ field }) => field === "exercise");
  // One and the same word over all figures is a title.
  const title = names.size === 1 && (hasLift || liftInWords([...names.keys()][0]) === null);
  const all = title ? titled.map((one) => ({ ...one, label: "" })) : titled;
  const lifts = title ? new Set<string>() : liftsAmong(names, hasLift);
  const labels = lifts ?? athletesAmong(names);
  if (labels === null) return null;
  const ofSets = all.filter(({ set }) => set !== "");
  const several = new Set(ofSets.map(({ set }) => set)).size > 1;
  const shared: Record<string, Column> = {};
  const known = new Set<number>();
  const groups = new Map<string, Group>();
  const take = (into: Record<string, Column>, field: string, column: Column) => {
    if (into[field] !== undefined) return;
    into[field] = column;
    known.add(column.index);
  };
  const bare = figuresOfSets(cells, row + 1, end, all.filter(isCounted));
  const alone = numbersAlone(cells[row]!);
  if (bare === "speed" && alone.length > 0) {
    const named = Object.fromEntries(all.map(({ field, column }) => [field, column]));
    if (oneSetARow(cells, { first: row + 1 }, end, named, alone)) return null;
  }
  const fieldOf = (one: HeadingParts) => one.field ?? (isCounted(one) ? bare : null);
  for (const heading of all) {
    const { column, label } = heading;
    const field = fieldOf(heading);
    const key = keyOf(heading);
    // The mean or the best of the sets says nothing that they do not, nor does how many there are.
    const summary =
      (right(heading) && namesSummary(label.split(" ").pop())) ||
      (field === "speed" && ofReps.test(column.words));
    const derived =
      several &&
      heading.set === "" &&
      (field === "setCount" ||
        (summary && (field === null || ofSets.some((one) => fieldOf(one) === field))));
    if (derived) known.add(column.index);
    else if (field === null || (right(heading) && label !== "" && !labels.has(label))) continue;
    else if (!right(heading) || key === noGroup || !isInside(field, heading, all))
      take(shared, field, column);
    else {
      const group = groups.get(key) ?? { of: heading, columns: {}, reps: [] };
      groups.set(key, group);
      if (!field.startsWith("rep ")) take(group.columns, field, column);
      else {
        group.reps.push(column);
        known.add(column.index);
      }
    }
  }
  const found = [...groups.values()];
  // Sets are counted from the first: "bar 15" above a column is none.
  const numbers = found.flatMap(({ of }) => (/^\d+$/.test(of.set) ? [of.set] : []));
  if (numbers.length > 0 && !numbers.includes("1")) return null;
  const loads = found.some(({ columns }) => columns.load ?? columns.scheme);
  // A figure alone under a name may be a column of any table.
  const enough = found.length > 1 || found.some(({ columns }) => Object.keys(columns).length > 1);
  if (!enough || !(loads || shared.load)) return null;
  // One speed beside several sets is of none of them; a load is, unless each has its own.
  for (const [field, { index }] of Object.entries(shared))
    if (ofOneSet.test(field) || (loads && field === "load")) {
      known.delete(index);
      delete shared[field];
    }
  const below = { first: row + 1, end, left };
  dateColumn(cells, below, shared, known);
  nameColumn(cells, below, shared, (lifts?.size ?? 0) > 0, known);
  // Names down the rows: what stands across is something else.
  if (lifts === null && shared.athlete !== undefined) return null;
  return {
    top,
    left,
    shared,
    known,
    groups: found.map(({ of, columns, reps }) => {
      const label: Placed | null = of.label === "" ? null : [of.label, of.column.index];
      return {
        columns: columns.scheme && !columns.load ? { ...columns, load: columns.scheme } : columns,
        reps,
        exercise: lifts === null ? null : label,
        athlete: lifts === null ? label : null,
        set: of.set === "" ? null : [of.set, of.column.index],
      };
    }),
  };
}

const noGroup = "|";
const keyOf = ({ set, label }: HeadingParts) => `${set}|${label}`;
/** "v1", "Squat speed 2"; a "rep speed 2" is of the second repetition. */
const ofNumberedSet = /(?:^|(?<!\brep)\s)(?:speed|speed rep|v|m\/s) ?#?(\d+)$/;
const ofOneSet = /^(?:speed|reserve|effort|scheme|rep \d+)$/;

/** A kind of set stands for its number; numbered speeds beside numbered loads are those of sets. */
function ofSet(heading: HeadingParts, numbered: boolean): HeadingParts {
  const { set, label, column } = heading;
  if (set === "" && setKinds.has(plainWords(label))) return { ...heading, set: label, label: "" };
  const kind = set === "" ? /\b(?:warm-?up|w\/u|marker)\b/i.exec(label)?.[0] : undefined;
  if (kind !== undefined && namesLift(label))
    return { ...heading, set: kind, label: label.replace(kind, "").trim() };
  const number = ofNumberedSet.exec(column.words);
  if (number === null || !numbered || set !== "") return heading;
  return { ...heading, field: "speed", set: number[1]! };
}

/** A figure, or a set that says no more ("Set 2") or only of which lift: "Set 2 RPE" is something else. */
function isCounted({ field, set, label }: HeadingParts): boolean {
  return field === null ? set !== "" && (label === "" || namesLift(label)) : figures.test(field);
}

/** Figures are of what they stand under; notes and the like when others have theirs, or stand further right. */
function isInside(field: string, one: HeadingParts, all: readonly HeadingParts[]): boolean {
  if (figures.test(field)) return true;
  return (
    all.some(
      (other) =>
        keyOf(other) !== keyOf(one) && isCounted(other) && other.column.index > one.column.index,
    ) || all.some((other) => keyOf(other) !== keyOf(one) && other.field === one.field)
  );
}
