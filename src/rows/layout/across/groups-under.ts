import type { Cells } from "../../cells";
import type { Column } from "../../header/column";
import { plainWords } from "../../header/header-words";
import { numbersAlone, speedsUnderNumbers } from "../../header/one-set-a-row";
import { setKinds } from "../../table/set-kinds";
import { namesSummary } from "../../table/summary-lines";
import { liftInWords } from "../lift-in-words";
import type { SpeedsSaid } from "../shorthand/spread-speeds";
import type { Placed } from "../unfolded";
import { dateColumn, nameColumn } from "./columns-of-rows";
import { figuresOfSets } from "./figures-of-sets";
import type { HeadedGroups } from "./header-of-groups";
import { figures, type HeadingParts, headingParts } from "./heading-parts";
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
  // A column of tests or jumps: what stands in sets is no load.
  if (headings.some(({ column }) => ofJumps.test(column.words))) return null;
  const labelled = labelsOver(headings, left);
  if (labelled === null) return null;
  const { all, lifts, labels } = labelled;
  const bare = figuresOfSets(cells, row + 1, end, all.filter(isCounted));
  const speedsAre = bare === "speed" ? speedsOver(cells, { row, top, end }, all) : "each set";
  if (speedsAre === "each rep") return null;
  const fieldOf = (one: HeadingParts) => one.field ?? (isCounted(one) ? bare : null);
  const { shared, known, groups } = sortedColumns({ all, labels, left, fieldOf });
  if (!areSets(groups, shared)) return null;
  // One speed beside several sets is of none of them; a load is, unless each has its own.
  for (const [field, { index }] of Object.entries(shared))
    if (ofOneSet.test(field) || (field === "load" && groups.some(hasLoad))) {
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
    isOpen: speedsAre === null,
    groups: groups.map(({ of, columns, reps }) => {
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

/** What numbers alone over the speeds count; null where it is open, and no word above them says sets. */
function speedsOver(
  cells: Cells,
  { row, top, end }: Omit<Place, "left">,
  headings: readonly HeadingParts[],
): SpeedsSaid {
  const alone = numbersAlone(cells[row]!);
  const saysSets = (line: readonly unknown[]) =>
    line.some((cell, at) => headingParts(cell, at).field === "setCount");
  if (alone.length === 0 || cells.slice(top, row).some(saysSets)) return "each set";
  const named = Object.fromEntries(headings.map(({ field, column }) => [field, column]));
  return speedsUnderNumbers(cells, { first: row + 1 }, end, named, alone);
}

type Labelled = {
  /** All headings; a title over all figures is no label. */
  readonly all: readonly HeadingParts[];
  /** Labels that are lifts, or sides of one; null where they are athletes. */
  readonly lifts: ReadonlySet<string> | null;
  readonly labels: ReadonlySet<string>;
};

/** What stands over the figures right of `left`; null where it is neither lifts nor athletes. */
function labelsOver(headings: readonly HeadingParts[], left: number): Labelled | null {
  const numbered = headings.some(
    ({ field, set }) => /^(?:load|reps)$/.test(field ?? "") && set !== "",
  );
  const titled = headings.map((heading) => ofSet(heading, numbered));
  const names = namesOver(titled.filter((one) => one.column.index >= left && isCounted(one)));
  const hasLift = titled.some(({ field }) => field === "exercise");
  // One and the same word over all figures is a title.
  const title = names.size === 1 && (hasLift || liftInWords([...names.keys()][0]) === null);
  if (title) {
    const none = new Set<string>();
    return { all: titled.map((one) => ({ ...one, label: "" })), lifts: none, labels: none };
  }
  const lifts = liftsAmong(names, hasLift);
  const labels = lifts ?? athletesAmong(names);
  return labels && { all: titled, lifts, labels };
}

type Sorted = {
  /** Columns that hold for all groups, by meaning. */
  readonly shared: Record<string, Column>;
  /** Places of all columns that are read, or that say nothing more. */
  readonly known: Set<number>;
  readonly groups: readonly Group[];
};

/** Each column with the group it stands in, or with those that all groups share. */
function sortedColumns({
  all,
  labels,
  left,
  fieldOf,
}: {
  readonly all: readonly HeadingParts[];
  readonly labels: ReadonlySet<string>;
  readonly left: number;
  readonly fieldOf: (one: HeadingParts) => string | null;
}): Sorted {
  const shared: Record<string, Column> = {};
  const known = new Set<number>();
  const groups = new Map<string, Group>();
  const take = (into: Record<string, Column>, field: string, column: Column) => {
    if (into[field] !== undefined) return;
    into[field] = column;
    known.add(column.index);
  };
  const right = ({ column }: HeadingParts) => column.index >= left;
  const ofSets = all.filter(({ set }) => set !== "");
  const several = new Set(ofSets.map(({ set }) => set)).size > 1;
  // The mean or the best of the sets says nothing that they do not, nor does how many there are.
  const isDerived = (one: HeadingParts, field: string | null) => {
    if (!several || one.set !== "") return false;
    if (field === "setCount") return true;
    const summary =
      (right(one) && namesSummary(one.label.split(" ").pop())) ||
      (field === "speed" && ofReps.test(one.column.words));
    return summary && (field === null || ofSets.some((other) => fieldOf(other) === field));
  };
  for (const heading of all) {
    const { column, label } = heading;
    const field = fieldOf(heading);
    const key = keyOf(heading);
    if (isDerived(heading, field)) known.add(column.index);
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
  return { shared, known, groups: [...groups.values()] };
}

const hasLoad = ({ columns }: Group) => (columns.load ?? columns.scheme) !== undefined;

/** Whether groups of columns are sets: two of them or more figures of one, with a load somewhere. */
function areSets(groups: readonly Group[], shared: Readonly<Record<string, Column>>): boolean {
  // Sets are counted from the first: "bar 15" above a column is none.
  const numbers = groups.flatMap(({ of }) => (/^\d+$/.test(of.set) ? [of.set] : []));
  if (numbers.length > 0 && !numbers.includes("1")) return false;
  // A figure alone under a name may be a column of any table.
  const enough = groups.length > 1 || groups.some(({ columns }) => Object.keys(columns).length > 1);
  return enough && (groups.some(hasLoad) || shared.load !== undefined);
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
