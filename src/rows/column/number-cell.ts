import { numberFromText } from "../value/number-text";
import { type Unit, unitOf, withPoundSign } from "../value/units";

/** A number cell's text taken apart. */
export type NumberCell = {
  readonly value: number;
  readonly thousands: number | null;
  readonly unsure: boolean;
  readonly unit: Unit | null;
  /** Words written beside the number: "85 (bar slipped, redo)". */
  readonly note: string;
  readonly perHand: boolean;
};

/** Letters of a number with the words beside it; what is longer is words. */
const longest = 1000;

const body = "(?:bw|b/w|body ?-?weight|eigengewicht)";
/** "BW+10": what is added to the athlete's own weight is the load. */
const ownBody = new RegExp(`^${body}\\s*\\+\\s*(?=\\d)`, "i");
const bodyAlone = new RegExp(`^\\s*${body}\\s*$`, "i");

/** True for the athlete's own weight and no more, which is no load to be missed. */
export const saysOwnBody = (text: string): boolean => bodyAlone.test(text);

/** Number, unit and note of a text cell; null when it does not begin with a number. */
export function numberCell(text: string): NumberCell | null {
  let note = "";
  const said = withPoundSign(text.trim()).replace(ownBody, "");
  if (said.length > longest) return null;
  let bare = said.replace(/\s*\(([^()]*)\)\s*$/, (_, words: string) => {
    note = words.trim();
    return "";
  });
  const loadAlone = bare.replace(
    /(?:\s*\/\s*|\s+(?:per|each)\s+)(?:hand|side|arm|seite)$|\s+each$/i,
    "",
  );
  const perHand = loadAlone !== bare;
  bare = loadAlone;
  const doubt = /\?+$/.exec(bare);
  if (doubt !== null) bare = bare.slice(0, -doubt[0].length).trim();
  const tail = /^([^a-z"″%]*?[\d.])\s*([a-z"″%][a-z/·.⁻¹\-\d]*?)\.?$/i.exec(bare);
  const unit = tail === null ? null : unitOf(tail[2]!);
  const number = numberFromText(unit === null ? bare : tail![1]!);
  if (number === null) return null;
  return { ...number, unsure: number.unsure || doubt !== null, unit, note, perHand };
}
