import { plainWords } from "../header/header-words";
import { isBlank } from "../value/blank";
import type { LayoutContext } from "./layout-context";
import { personName } from "./sections/above";

const label = /^(?:athlete|name|runner|athlet|athletin|sportler)\s*:?\s*(.*)$/i;

/**
 * The athlete of a tab that has no column for one: as the coach said, else "Name: …" or a full name
 * alone in a row above the header, else the tab's own name when it is a full one. A single word may
 * be a season or a place, so it is only offered when asked.
 */
export function athleteOfTab({ cells, title, tab }: LayoutContext, headerRow: number) {
  if (tab.athlete !== undefined) return tab.athlete;
  for (let row = 0; row < headerRow; row++) {
    const [first, second, ...rest] = cells[row]!.filter((cell) => !isBlank(cell));
    if (typeof first !== "string" || rest.length > 0) continue;
    const labelled = label.exec(first.trim());
    const beside = labelled === null ? null : labelled[1] || second;
    const name = typeof beside === "string" ? personName(beside) : null;
    if (name !== null) return name;
    if (second === undefined && fullName(first) !== null) return fullName(first);
  }
  return fullName(title);
}

/** What to offer when the athlete of a tab has to be asked. */
export function likelyAthlete(title: string): string | null {
  return personName(title);
}

const notNames =
  /\b(diary|runs?|running|easy|long|sleep|wellness|weekly|spring|summer|autumn|winter|results|tests?|team|group|club|plan|notes?|club|tagebuch|lauf|laufe|januar|februar|march|april|may|june|july|august|september|october|november|december)\b/;

function fullName(text: string): string | null {
  const name = personName(text);
  return name !== null && /\s/.test(name) && !notNames.test(plainWords(text)) ? name : null;
}
