import { type DayAside, dayColumn } from "../column/day-column";
import { textColumn } from "../column/text-column";
import type { CellReader, TableView } from "../table-view";
import { reportBlank } from "./needed";

/** Whose row it is, and of which day. */
export type AthleteDay = { readonly athlete: string; readonly day: number };

/** Reader of a row's day and athlete; null without either, which is reported. A name is read past a bad day: it may be carried on. */
export function athleteDay(view: TableView, aside: DayAside): CellReader<AthleteDay | null> {
  const { fields } = view;
  const readDay = dayColumn(view, fields.day, true, aside);
  const name = textColumn(view, fields.athlete, true);
  return (line, row) => {
    const day = readDay(line, row);
    const athlete = name(line, row);
    if (day === null) return null;
    return athlete === "" ? reportBlank(view, fields.athlete, row) : { athlete, day };
  };
}
