import type { TableView } from "../table-view";
import { isBlank } from "../value/blank";
import { holdsNothing } from "../value/no-value";
import type { SchemeRow } from "./scheme-row";
import type { SpeedsBeside } from "./shorthand/speeds-beside";
import type { Unfolded } from "./unfolded";
import { withWords } from "./with-words";

/**
 * A ride, a swim, a rest: understood, and no lift. A row that lacks what it needs is still reported, and
 * one with a load in its own column counts.
 */
export function noLift(
  { fields }: TableView,
  into: Unfolded,
  read: SchemeRow,
  words: string,
  listed: SpeedsBeside,
): void {
  const { row, line, scheme, shared, athlete, day, exercise } = read;
  const unreadable = day === null && !isBlank(line[fields.day!.index]);
  const lacking = isBlank(exercise) || athlete === "" || day === null;
  const speeds = listed.speeds.some((speed) => speed !== null);
  const loaded = !holdsNothing(shared.load?.[0]);
  const emits = unreadable || loaded || (isBlank(line[scheme]) && (lacking || speeds));
  const spoken = [
    holdsNothing(exercise) ? "" : String(exercise).trim(),
    words,
    read.noteWords,
    emits && !loaded ? "" : read.others(),
  ];
  into.note(row, scheme, athlete, day, "day", spoken.filter((part) => part !== "").join("; "));
  if (emits)
    into.emit(row, {
      ...shared,
      load: shared.load ?? ["", scheme],
      speed:
        fields.speed === undefined ? undefined : [line[fields.speed.index], fields.speed.index],
      note: withWords(read.note, words, scheme),
    });
}
