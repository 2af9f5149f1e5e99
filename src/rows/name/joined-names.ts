import type { Cells } from "../cells";
import type { ColumnAnswers } from "../header/column-answers";
import { headerWords } from "../header/header-words";
import { rowsSearched } from "../header/rows-searched";
import { sampleColumn, valueFit } from "../header/value-fit";
import { isBlank } from "../value/blank";
import { isDitto } from "../value/ditto";

const given =
  /^(?:first|first ?name|given name|forename|vorname|prenom|voornaam|nombre|imie|fornamn|fornavn)$/;
const family =
  /^(?:surname|last|last ?name|family ?name|nachname|familienname|achternaam|cognome|apellidos?|apelido|sobrenome|nazwisko|efternamn|etternavn|nom de famille)$/;
const either = /^(?:name|nom|nome)$/;
const whole = /^(?:athlete|runner|athlet|athletin|sportler|player)$/;

const joinedBefore = new WeakMap<Cells, Cells>();

/**
 * The cells with first names and surnames of two columns put together in the left one; the same cells
 * where no row of headings has both, or where the coach has said what one of them is.
 */
export function joinedNames(cells: Cells, answers: ColumnAnswers | null = null): Cells {
  const known = joinedBefore.get(cells);
  if (known !== undefined && answers === null) return known;
  const found = headingsOfNames(cells);
  const said = answers?.columns.some(
    ({ column, field }) =>
      field !== undefined && (column - 1 === found?.given || column - 1 === found?.family),
  );
  const joined = found === null || said === true ? cells : withNamesJoined(cells, found);
  if (answers === null) joinedBefore.set(cells, joined);
  return joined;
}

type Names = { readonly row: number; readonly given: number; readonly family: number };

function headingsOfNames(cells: Cells): Names | null {
  for (let row = 0; row < Math.min(cells.length, rowsSearched); row++) {
    const words = cells[row]!.map((cell) => headerWords(cell).words);
    const first = words.findIndex((one) => given.test(one));
    // "Last" is a load in German, unless "First" stands beside it.
    const last = words.findIndex(
      (one) => family.test(one) && (one !== "last" || words[first]?.startsWith("first") === true),
    );
    const name = words.findIndex((one) => either.test(one));
    const names = {
      row,
      given: first >= 0 ? first : name >= 0 ? name : words.findIndex((one) => whole.test(one)),
      family: last >= 0 ? last : name,
    };
    if (first < 0 && last < 0) continue;
    if (holdsNames(cells, row, names.given) && holdsNames(cells, row, names.family)) return names;
  }
  return null;
}

/** "First" and "Last" may head the first and last day, or set, as well. */
function holdsNames(cells: Cells, row: number, column: number): boolean {
  if (column < 0) return false;
  const sample = sampleColumn(cells, row + 1, cells.length, column);
  return sample.some((cell) => !isDitto(cell)) && valueFit("athlete", sample) >= 0.5;
}

function withNamesJoined(cells: Cells, { row, given, family }: Names): Cells {
  const head = cells[row]!;
  const [left, right] = given < family ? [given, family] : [family, given];
  return cells.map((line, at) => {
    if (at < row || (isBlank(line[left]) && isBlank(line[right]))) return line;
    const one = [...line];
    const again = line[left] === head[left] && line[right] === head[right];
    one[left] = again ? "Athlete" : together(line[given], line[family]);
    one[right] = "";
    return one;
  });
}

function together(first: unknown, last: unknown): unknown {
  if (isBlank(first) || isBlank(last)) return isBlank(first) ? last : first;
  if (isDitto(first) && isDitto(last)) return first;
  const [one, other] = [String(first).trim(), String(last).trim()];
  // Some write the whole name beside the first one.
  return other.split(/\s+/).includes(one) ? other : `${one} ${other}`;
}
