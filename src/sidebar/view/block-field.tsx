import { weekViewWords as words } from "../../words/week-view";
import { type OfTurn, turnFields } from "./turn-fields";

/** The block of a session's turn: those of the rotation, and its own where it is none of them. */
export function BlockField(given: OfTurn) {
  const { line, session } = given;
  const { wished, change, named } = turnFields(given);
  return (
    <label class="field">
      <span>{words.block}</span>
      <select
        aria-label={named(words.block)}
        value={wished.block ?? session.block}
        onChange={({ currentTarget }) => change({ block: currentTarget.value })}
      >
        {[...new Set([...line.blocks, session.block])].map((block) => (
          <option key={block}>{block}</option>
        ))}
      </select>
    </label>
  );
}
