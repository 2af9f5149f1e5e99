import { blockText } from "../../coaching/blocks/block";
import type { ProposedLine, ProposedSession } from "../../coaching/next-week/propose-line";
import type { FieldsChanged, TurnChanged } from "../messages/week-change";

/** All that was changed of one athlete's week. */
export type ChangeOfAthlete = FieldsChanged & {
  readonly turns: ReadonlyMap<string, TurnChanged>;
};

/** A field set by hand; of another turn than the week's first with its name. */
export type FieldByHand = { readonly field: keyof FieldsChanged; readonly turn: string };

/**
 * The fields of a change that make the week another than it is proposed: one set back to what is proposed
 * is no change any more.
 *
 * @param line the week with the change
 * @param asProposed the week without it
 */
export function fieldsByHand(
  { turns, ...ofWeek }: ChangeOfAthlete,
  line: ProposedLine,
  asProposed: () => ProposedLine,
): readonly FieldByHand[] {
  const set = [["", ofWeek] as const, ...turns].flatMap(([turn, fields]) =>
    (Object.keys(fields) as (keyof FieldsChanged)[]).map((field) => ({ field, turn })),
  );
  if (set.length === 0) return [];
  const before = asProposed();
  return set.filter(({ field, turn }) => {
    if (field === "leaveOut" || field === "noRack") return ofWeek[field] === true;
    if (field === "sessions") return line.sessions.length !== before.sessions.length;
    return shown(field, ofTurn(line, turn)) !== shown(field, ofTurn(before, turn));
  });
}

const ofTurn = ({ sessions }: ProposedLine, turn: string) =>
  sessions.find((session) => session.turn === turn);

/** A field of a session as text, to be compared; "" for one that is not of a session. */
function shown(field: keyof FieldsChanged, session: ProposedSession | undefined): string {
  if (session === undefined) return "";
  const { block, loadKg, sets, day, contacts, stackKg, stackCm } = session;
  const fields: Partial<Record<keyof FieldsChanged, string | number>> = {
    ...{ block: blockText(block), loadKg, sets, day, contacts },
    stack: `${stackKg.join("+")} ${stackCm}`,
  };
  return String(fields[field] ?? "");
}
