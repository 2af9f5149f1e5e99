import type { LiftingSet } from "../../coaching/record/lifting-set";
import { choiceColumn, yesNoColumn } from "../column/choice-column";
import { numberColumn } from "../column/number-column";
import { plausible } from "../column/quantity";
import { quantityColumn } from "../column/quantity-column";
import { textColumn } from "../column/text-column";
import type { TableView } from "../table-view";
import { reserveInWords, reserveOfEffort } from "../value/reserve-in-words";
import { speedKinds } from "./set-kinds";
import { type SetNumbers, setBounds } from "./set-numbers";

/** How a set was done and with what. */
type SetDetails = Pick<
  LiftingSet,
  "speedIs" | "tool" | "barKg" | "gym" | "movedWell" | "repsInReserve" | "by" | "note"
>;

/** Reader of a set's details; words beside its load are a part of its note. */
export function setDetails(
  view: TableView,
  numbers: SetNumbers,
): (line: readonly unknown[], row: number, besideLoad: string) => SetDetails {
  const { fields } = view;
  const note = textColumn(view, fields.note);
  const speedIs = choiceColumn(view, fields.speedIs, speedKinds);
  const tool = textColumn(view, fields.tool);
  const bar = quantityColumn(view, fields.bar, plausible.barKg, null, false, numbers.bar);
  const gym = textColumn(view, fields.gym);
  const movedWell = yesNoColumn(view, fields.movedWell);
  const reserve = numberColumn(view, fields.reserve, setBounds.reserve);
  const effort = numberColumn(view, fields.effort, setBounds.effort);
  const by = textColumn(view, fields.by);
  return (line, row, besideLoad) => {
    const said = joined(note(line, row), besideLoad);
    return {
      speedIs: speedIs(line, row),
      tool: tool(line, row),
      barKg: bar(line, row),
      gym: gym(line, row),
      movedWell: movedWell(line, row),
      repsInReserve:
        reserve(line, row) ?? reserveOfEffort(effort(line, row)) ?? reserveInWords(said),
      by: by(line, row),
      note: said,
    };
  };
}

function joined(one: string, other: string): string {
  return one === "" || other === "" ? one + other : `${one}; ${other}`;
}
