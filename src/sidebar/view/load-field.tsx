import type { WeekView } from "../../actions/messages";
import { printedNumbers } from "../../words/printed-numbers";
import { weekViewWords as words } from "../../words/week-view";
import { type OfTurn, turnFields } from "./turn-fields";

/** The heaviest load that can be asked for, kg. */
const mostKg = 500;

/** The load of a session's turn, a plate step up or down; nothing where another exercise takes the lift's place. */
export function LoadField({
  week: { stepKg, numbers },
  ...given
}: OfTurn & { readonly week: Pick<WeekView, "stepKg" | "numbers"> }) {
  const { session } = given;
  if (session.instead !== "") return null;
  const { asked, wished, change, named } = turnFields(given);
  const { loadKg = session.loadKg } = wished;
  const lift = (kg: number) => change({ loadKg: Math.min(mostKg, Math.max(0, kg)) });
  const { unit, mass } = printedNumbers(numbers);
  return (
    <fieldset class="field">
      <legend>{words.load(unit)}</legend>
      <div class="stepper">
        <button
          type="button"
          aria-label={named(words.lighter)}
          onClick={() => lift(loadKg - stepKg)}
        >
          −
        </button>
        <output>{mass(loadKg)}</output>
        <button
          type="button"
          aria-label={named(words.heavier)}
          // From what was asked for before, where no plates make it: so a gap is stepped over.
          onClick={() => lift(Math.max(loadKg, asked.loadKg ?? 0) + stepKg)}
        >
          +
        </button>
      </div>
    </fieldset>
  );
}
