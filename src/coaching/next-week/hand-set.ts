import type { Wanted } from "./lift-plan";
import type { LineChange } from "./proposed-line";

/**
 * What a coach has set by hand of one turn of a week.
 *
 * @param turn its name, "" for the week's first
 */
export function handSet({ block, loadKg, turnLoadsKg }: LineChange, turn: string): Wanted {
  if (turn === "")
    return { ...(block !== undefined && { block }), ...(loadKg !== undefined && { loadKg }) };
  const kg = turnLoadsKg?.get(turn);
  return kg === undefined ? {} : { loadKg: kg };
}
