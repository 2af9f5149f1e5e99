import type { Day } from "../../calendar/day";
import { exerciseKey } from "../../record/exercise-key";
import { nameKey } from "../../record/name-key";
import type { AthleteRows } from "../../series/squad-index";
import type { HoldNote, SeasonHold } from "../season-hold";

/** What reads a speed or a jump, or is jumped from, and words that it is another (common practice, no source). */
const thing =
  "encoder|tool|device|sensor|pod|tracker|battery|app|phone|camera|mat|platform|shoes|trainers|floor|surface|gerät|matte|schuhe|boden";
const another =
  "new|another|other|different|spare|borrowed|swapped|changed|replaced|neue[rsnm]?|andere[rsnm]?";
const said = new RegExp(
  `(?<!\\p{L})((?:${another})(?: \\p{L}+)? (?:${thing})|(?:${thing})(?: was| is)? (?:new|swapped|changed|replaced))(?!\\p{L})`,
  "iu",
);

/** A change may be found to begin some days after what began it. */
const daysBefore = 7;

/**
 * The first day on which a coach noted another tool, mat, shoes or floor beside the value that moved,
 * where its change may have begun then: that is looked at before the athlete. The word stays, as
 * nobody knows from a note how the new one reads.
 *
 * @param rows the athlete's, those of the value that moved among them
 */
export function newToolNoted(
  { value, sinceDay, sinceFrom, sinceTo }: SeasonHold,
  rows: AthleteRows,
): readonly HoldNote[] {
  if (sinceDay === null) return [];
  const { kind, of } = value!;
  const notes: readonly { readonly day: Day; readonly note: string }[] =
    kind === "bar speed"
      ? rows.lifts.get(exerciseKey(of))!.map(({ set }) => set)
      : rows.jumps.get(nameKey(of))!;
  const from = (sinceFrom ?? sinceDay) - daysBefore;
  const to = sinceTo ?? sinceDay;
  const first = notes.find(
    ({ day, note }) => day >= from && day <= to && note !== "" && said.test(note),
  );
  return first ? [{ code: "new-tool-noted", facts: { day: first.day } }] : [];
}
