import type { Day } from "../../coaching/calendar/day";
import type { Race } from "../../coaching/record/race";
import { cellAbove } from "../column/above";
import { choiceColumn, choices } from "../column/choice-column";
import { dayColumn, newDayAside } from "../column/day-column";
import { minuteColumn } from "../column/minute-column";
import { textColumn, trimmed } from "../column/text-column";
import type { Column } from "../header/column";
import type { Reading } from "../reading";
import type { CellReader, TableView } from "../table-view";
import { isBlank } from "../value/blank";
import { isDitto } from "../value/ditto";
import { isErrorCell } from "../value/error-cell";
import { saysNoValue } from "../value/no-value";
import { numberFromText } from "../value/number-text";
import { DoubledRows } from "./doubled-rows";
import { reportBlank, reportDoubled } from "./needed";
import { readLines } from "./read-lines";

const classes = choices<"A" | "B" | "C">({
  A: "a|a race|a-race|main|goal",
  B: "b|b race|b-race",
  C: "c|c race|c-race|minor|training",
});

/** Rows of the Races table; nobody named means the whole squad. */
export function readRaceRows(view: TableView): Reading<Race> {
  const { fields } = view;
  const aside = { ...newDayAside(), last: null };
  const readDay = dayColumn(view, fields.day, true, aside);
  const start = minuteColumn(view, fields.start);
  const name = textColumn(view, fields.race, true);
  const who = textColumn(view, fields.who);
  const whoAt = fields.who?.index ?? -1;
  const whoAbove = cellAbove(view, whoAt);
  const distance = distanceColumn(view, fields.distance);
  const surface = textColumn(view, fields.surface);
  const matters = choiceColumn(view, fields.matters, classes);
  const doubled = new DoubledRows(view);
  const furtherDays: Race[] = [];

  const reading = readLines<Race>(
    view,
    (line, row) => {
      const day = readDay(line, row);
      if (day === null) return null;
      const last: Day = aside.last ?? day;
      if (last - day >= mostDays) {
        view.log.add("not-a-day", row, fields.day!.index, line[fields.day!.index], {}, true);
        return null;
      }
      const race = name(line, row);
      if (race === "") return reportBlank(view, fields.race, row);
      // Nobody named is the whole squad; whom a formula failed to name is not, nor whom a mark repeats of it.
      const cell = isDitto(line[whoAt]) ? whoAbove(row) : line[whoAt];
      if (isErrorCell(cell)) return reportBlank(view, fields.who, row);
      const earlier = doubled.earlier(line, row);
      if (earlier >= 0) return reportDoubled(view, row, earlier);
      // A line each in one cell: a row of names that a space alone would run together.
      const lines = String(cell)
        .split(/[\r\n]/)
        .map(trimmed);
      const runs = lines.length > 1 ? lines.filter((one) => one !== "").join("; ") : who(line, row);
      const first: Race = {
        row: row + 1,
        day,
        startMinute: start(line, row) ?? aside.minute,
        race,
        who: runs === "" || /^(all|alle|squad|everyone|everybody)$/i.test(runs) ? "all" : runs,
        distanceKm: distance(line, row),
        surface: surface(line, row),
        matters: matters(line, row),
      };
      // Which day of a meeting is whose is not said: each is kept free as a race day is.
      for (let further = day + 1; further <= last; further++)
        furtherDays.push({ ...first, day: further, startMinute: null });
      return first;
    },
    [start, name, who, distance, surface, matters],
  );
  if (furtherDays.length === 0) return reading;
  const records = [...reading.records, ...furtherDays].sort((a, b) => a.row - b.row);
  return { ...reading, records };
}

/** A meeting of more days is a slip of the finger (common practice, no source). */
const mostDays = 10;

/** Road and track distances in words, km (World Athletics competition rules). */
const named = new Map([
  ["marathon", 42.195],
  ["half marathon", 21.0975],
  ["half", 21.0975],
  ["halbmarathon", 21.0975],
  ["hm", 21.0975],
  ["mile", 1.609344],
  ["1 mile", 1.609344],
]);

/** Reader of distances, km: "10 km", "5000 m", "10k", "half marathon"; reports `distance-unsettled`. */
function distanceColumn(view: TableView, column: Column | undefined): CellReader<number | null> {
  if (column === undefined) return () => null;
  const { index, heading, unit } = column;
  const headingUnit =
    unit?.name === "km" || unit?.name === "m" || unit?.name === "mi" ? unit.name : null;
  const settle = (
    value: number,
    said: string | null,
    cell: unknown,
    row: number,
  ): number | null => {
    const km =
      said === "m"
        ? value / 1000
        : said === "mi"
          ? value * 1.609344
          : said === "km"
            ? value
            : // Nobody races over 400 km or under 60 m, so a bare number settles itself.
              value >= 400
              ? value / 1000
              : value <= 250 && value !== 60 && value !== 100 && value !== 200
                ? value
                : Number.NaN;
    if (km >= 0.05 && km <= 250) return km;
    const code = Number.isNaN(km) ? "distance-unsettled" : "implausible";
    view.log.add(code, row, index, cell, { low: 0.05, high: 250, unit: "km", heading });
    return null;
  };
  return (line, row) => {
    const cell = line[index];
    if (isBlank(cell) || cell === false) return null;
    if (typeof cell === "number" && Number.isFinite(cell))
      return settle(cell, headingUnit, cell, row);
    const text = typeof cell === "string" ? trimmed(cell).toLowerCase() : "";
    if (saysNoValue(text)) return null;
    const known = named.get(text);
    if (known !== undefined) return known;
    const [, figure = "", unitSaid] =
      /^([\d.,\s']+?)\s*(km|k|m|metres|meters|mi|miles|mile)?\s*(?:sc|steeple(?:chase)?|hurdles|road|track)?$/.exec(
        text,
      ) ?? [];
    const number = numberFromText(figure);
    if (number === null) {
      view.log.add("not-a-number", row, index, cell, { heading });
      return null;
    }
    const said =
      unitSaid === undefined
        ? headingUnit
        : unitSaid.startsWith("k")
          ? "km"
          : unitSaid.startsWith("mi")
            ? "mi"
            : "m";
    const metres = said === "m" && number.thousands !== null;
    return settle(metres ? number.thousands! : number.value, said, cell, row);
  };
}
