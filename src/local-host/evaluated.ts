import { unplacedReference } from "./engine/unplaced-reference";
import type { Host } from "./host";
import { messageOf } from "./message-of";

/** What became of a formula: its rows of cells, or the sentence that refused it. */
export type Evaluated =
  | { readonly ok: true; readonly values: readonly (readonly unknown[])[] }
  | { readonly ok: false; readonly sentence: string };

const room = { rows: 60_000, columns: 80 };

/** Calculates one formula in a tab of its own that goes away again. */
export async function evaluated(host: Host, text: string): Promise<Evaluated> {
  const formula = text.startsWith("=") ? text : `=${text}`;
  const unplaced = unplacedReference(formula);
  if (unplaced !== null) return refused(`Say which tab ${unplaced} is on, as in Sets!${unplaced}.`);
  const { book } = host.engine;
  const tab = book.create(`Formula ${crypto.randomUUID()}`, room.rows, room.columns, {});
  try {
    tab.getRange(0, 0).setValue({ f: formula, v: null });
    await host.settled();
    const values = host
      .tab(tab.getSheetName())
      .getRange(1, 1, ...host.spread(tab))
      .getValues();
    const first = values[0]?.[0];
    const sentence = host.sentenceAt(tab.getSheetId(), 0, 0);
    if (first === "#ERROR!" && sentence !== undefined) return refused(sentence);
    return typeof first === "string" && /^#[A-Z/0-9]+[!?]?$/.test(first)
      ? refused(
          `${first}: ${errorSentences.get(first) ?? "the formula gives an error."}${parted(first, formula)}`,
        )
      : { ok: true, values };
  } catch (error) {
    return refused(messageOf(error));
  } finally {
    book.deleteSheet(tab);
  }
}

/** Semicolons between arguments, as sheets with decimal commas have them, are no function's to this grid. */
const parted = (error: string, formula: string): string =>
  error === "#NAME?" && formula.replace(/"[^"]*"|\{[^}]*\}/g, "").includes(";")
    ? " Arguments are parted by commas here, not by semicolons."
    : "";

const refused = (sentence: string): Evaluated => ({ ok: false, sentence });

const errorSentences = new Map([
  ["#NAME?", "the formula names a function or a range that does not exist."],
  ["#REF!", "the formula names a tab or cell that does not exist."],
  ["#SPILL!", "the result has no room, the cells beside it are not empty."],
  ["#VALUE!", "the formula is given something of the wrong kind."],
  ["#DIV/0!", "the formula divides by zero."],
  ["#NUM!", "the formula gives a number that cannot be shown."],
  ["#N/A", "the formula found nothing."],
]);
