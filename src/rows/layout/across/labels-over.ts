import { plainWords } from "../../header/header-words";
import { setKinds } from "../../table/set-kinds";
import { liftInWords } from "../lift-in-words";
import { figures, type HeadingParts } from "./heading-parts";
import { athletesAmong, liftsAmong, namesLift, namesOver } from "./names-over-figures";

type Labelled = {
  /** All headings; a title over all figures is no label. */
  readonly all: readonly HeadingParts[];
  /** Labels that are lifts, or sides of one; null where they are athletes. */
  readonly lifts: ReadonlySet<string> | null;
  readonly labels: ReadonlySet<string>;
};

/** What stands over the figures right of `left`; null where it is neither lifts nor athletes. */
export function labelsOver(headings: readonly HeadingParts[], left: number): Labelled | null {
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

/** "v1", "Squat speed 2"; a "rep speed 2" is of the second repetition. */
const ofNumberedSet = /(?:^|(?<!\brep)\s)(?:speed|speed rep|v|m\/s) ?#?(\d+)$/;

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
export function isCounted({ field, set, label }: HeadingParts): boolean {
  return field === null ? set !== "" && (label === "" || namesLift(label)) : figures.test(field);
}
