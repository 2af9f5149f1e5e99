import type { Cells } from "../cells";
import { headerWords, plainWords } from "../header/header-words";
import { headingLookup } from "../header/recognise-header";
import { rowsSearched } from "../header/rows-searched";
import { sampleColumn } from "../header/value-fit";
import { leastLoad } from "../layout/shorthand/scheme";
import { noSense } from "../layout/shorthand/scheme-order";
import { isShorthand, setCell } from "../layout/shorthand/set-cell";
import { isBlank } from "../value/blank";
import { unitOf } from "../value/units";

const headsUnits =
  /^(?:units?|unit of load|load unit|einheit|kg ?(?:\/|or) ?lbs?|lbs? ?(?:\/|or) ?kg)$/;
const before = new WeakMap<Cells, Cells>();

/**
 * The cells with units of mass that stand in a column of their own ("175", "lb") put to the loads left
 * of it; the same cells where there is no such column.
 */
export function unitsBeside(cells: Cells): Cells {
  const known = before.get(cells);
  if (known !== undefined) return known;
  const found = columnOfUnits(cells);
  const joined = found === null ? cells : withUnits(cells, found);
  before.set(cells, joined);
  return joined;
}

type Place = { readonly row: number; readonly load: number; readonly unit: number };

function columnOfUnits(cells: Cells): Place | null {
  for (let row = 0; row < Math.min(cells.length, rowsSearched); row++) {
    const line = cells[row]!;
    const load = line.findIndex((cell) => {
      const { words, unit } = headerWords(cell);
      return unit === null && headingLookup("Sets").get(words) === "load";
    });
    if (load < 0) continue;
    const unit = line.findIndex(
      (cell, at) => headsUnits.test(plainWords(cell)) || (at === load + 1 && isBlank(cell)),
    );
    if (unit < 0) continue;
    const sample = sampleColumn(cells, row + 1, cells.length, unit);
    if (sample.length > 0 && sample.every(isMass)) return { row, load, unit };
  }
  return null;
}

function isMass(cell: unknown): boolean {
  return typeof cell === "string" && unitOf(cell)?.quantity === "mass";
}

function withUnits(cells: Cells, { row, load, unit }: Place): Cells {
  return cells.map((line, at) => {
    if (at < row || !(at === row || isMass(line[unit]))) return line;
    const one = [...line];
    one[unit] = "";
    one[load] = withUnit(line[load], String(line[unit]));
    return one;
  });
}

/** A number with the unit, shorthand with it behind each load ("175x5 lb .62"); all else as written. */
function withUnit(cell: unknown, unit: string): unknown {
  const text = String(cell).trim();
  if (/^[\d.,]+$/.test(text)) return `${text} ${unit}`;
  if (/kg|lb/i.test(text) || !isShorthand(setCell(cell, noSense))) return cell;
  return text.replace(figures, (some) =>
    some.split(/[^\d.,]+/).some((one) => Number(one.replace(",", ".")) >= leastLoad)
      ? `${some} ${unit}`
      : some,
  );
}

/** Loads with their sets and repetitions, or speeds: "3x5@80", "60/70/80", "0.62". */
const figures = /(?<![\d.,])\d+(?:[.,]\d+)*(?:\s*[x×✕*/@]\s*\d+(?:[.,]\d+)*)*/g;
