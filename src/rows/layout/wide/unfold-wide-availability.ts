import { type Day, isoFromDay } from "../../../coaching/calendar/day";
import { plainWords } from "../../header/header-words";
import { mayDoOfWords } from "../../table/read-availability";
import { isBlank } from "../../value/blank";
import type { LayoutContext } from "../layout-context";
import type { Unfolded } from "../unfolded";
import type { AthleteRow } from "./athlete-rows";
import { type Block, gridOf } from "./grid-blocks";
import { weekNotes } from "./week-notes";

/** Days in a row on which one cell says the same. */
type Spell = { readonly said: string; readonly first: Mark; last: Mark };
type Mark = { readonly day: Day; readonly column: number };

const speaks =
  /(?<!\p{L})(availab\p{L}*|absen\p{L}*|injur\p{L}*|verfugbar\p{L}*|abwesen\p{L}*|fehlzeiten)(?!\p{L})/u;

/**
 * One row an athlete, dates across, in each cell a word of what the athlete may do or a letter that a
 * legend explains: one spell for each run of days that say the same. Null when dates do not run across,
 * or when nothing speaks of availability and the coach has not said so.
 */
export function unfoldWideAvailability(context: LayoutContext): Unfolded | null {
  const grid = gridOf(context);
  if (grid === null) return null;
  const { into, blocks } = grid;
  const { legend, isCode } = legendOf(context);
  const titles = plainWords([context.title, ...blocks.flatMap((one) => one.titles)].join(" | "));
  const explained = legend.size > 1 && [...legend.values()].some((word) => mayDoOfWords(word));
  if (!context.said && !explained && !speaks.test(titles)) return null;
  const saidBy = (row: number, column: number) => {
    const cell = context.cells[row]![column];
    if (isBlank(cell) || cell === false) return "";
    return legend.get(keyOf(cell)) ?? String(cell).trim();
  };
  const marked = blocks.flatMap((block) =>
    block.rows.flatMap((of) => {
      // "A", "available" below the athletes is the legend.
      const key = keyOf(of.athlete);
      if (!(legend.has(key) && isCode(key)))
        return [{ block, of, spells: spellsOf(block, of, saidBy) }];
      into.mark(of.row, "heading");
      return [];
    }),
  );
  // Of a week under another each athlete's last mark counts, wherever it stands.
  const lastOf = new Map<string, Day>();
  for (const { of, spells } of marked)
    for (const { last } of spells) {
      const key = plainWords(of.athlete);
      lastOf.set(key, Math.max(last.day, lastOf.get(key) ?? last.day));
    }
  const lastDay = Math.max(...lastOf.values());
  // Where free days are marked too, a blank one is not yet known; else it is free.
  const marksFree = marked.some(({ spells }) =>
    spells.some(({ said }) => mayDoOfWords(said) === "full"),
  );
  for (const { block, of, spells } of marked) {
    weekNotes(into, block.header, context.cells[of.row]!, of);
    const ownLast = lastOf.get(plainWords(of.athlete));
    for (const { said, first, last } of spells) {
      const open = last.day === ownLast && (marksFree || last.day === lastDay);
      into.emit(of.row, {
        athlete: [of.athlete, of.nameColumn],
        from: [isoFromDay(first.day), first.column],
        mayDo: [said, first.column],
        ...(open && mayDoOfWords(said) !== "full"
          ? {}
          : { until: [isoFromDay(last.day), last.column] }),
      });
    }
  }
  return into;
}

function spellsOf(
  { header }: Block,
  { row }: AthleteRow,
  saidBy: (row: number, column: number) => string,
): readonly Spell[] {
  const spells: Spell[] = [];
  let before = "";
  for (const { day, column } of [...header.days].sort((a, b) => a.day - b.day)) {
    const said = saidBy(row, column);
    const spell = spells[spells.length - 1];
    if (said !== "" && said === before) spell!.last = { day, column };
    else if (said !== "") spells.push({ said, first: { day, column }, last: { day, column } });
    before = said;
  }
  return spells;
}

const keyOf = (cell: unknown) => String(cell).trim().toLowerCase();

const pair =
  /(?<!\p{L})(\p{L}{1,3})(?:\s*[=:]\s*|\s+[-–]\s+)(\p{L}[\p{L} ]*?)(?=\s*(?:[,;|/).\n]|$))/gu;

/**
 * Letters and what they mean: "A = available, I = injured", or "A" beside "available". Two or three letters
 * may be an athlete's name: they are a code where they are marked.
 */
function legendOf({ cells, end }: LayoutContext): {
  readonly legend: ReadonlyMap<string, string>;
  readonly isCode: (key: string) => boolean;
} {
  const legend = new Map<string, string>();
  const filled = cells.slice(0, end).map((line) => line.filter((cell) => !isBlank(cell)));
  const marks = new Set(filled.flatMap((line) => line.slice(1).map(keyOf)));
  const isCode = (key: string) => /^\p{L}{1,3}$/u.test(key) && (key.length === 1 || marks.has(key));
  for (const line of filled) {
    const texts = line.filter((cell): cell is string => typeof cell === "string");
    for (const text of texts)
      for (const [, code, word] of text.slice(0, 400).matchAll(pair))
        legend.set(code!.toLowerCase(), word!.trim());
    const [code = "", word = ""] = texts;
    if (line.length === 2 && isCode(keyOf(code)) && mayDoOfWords(word) !== null)
      legend.set(keyOf(code), word.trim());
  }
  return { legend, isCode };
}
