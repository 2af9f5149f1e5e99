import { saysAbsent } from "../../coaching/availability/says-absent";
import { hurtParts } from "../../coaching/diary/hurt-parts";
import { symptomWords } from "../../coaching/diary/symptom-words";

const month = "(?:jan|feb|mar|mär|apr|may|mai|jun|jul|aug|sep|o[ck]t|nov|de[cz])\\p{L}*\\.?";
const dotted = "(?:0?[1-9]|[12]\\d|3[01])\\.(?:0?[1-9]|1[0-2])";
const ofMonth = "(?:0?[1-9]|[12]\\d|3[01])(?:st|nd|rd|th|\\.)?";
/** Days, spans and ratings out of ten that such words bring with them. */
const told = new RegExp(
  [
    "\\d{4}-\\d{2}-\\d{2}",
    `${ofMonth}(?:\\s*[-–]\\s*${ofMonth})?\\s*${month}`,
    `${month}\\s*${ofMonth}`,
    "(?:0?[1-9]|[12]\\d|3[01])/(?:0?[1-9]|1[0-2])(?:/(?:\\d{4}|\\d{2}))?",
    // "12.5" alone may be kilograms.
    `${dotted}\\.(?:\\d{4}|\\d{2})?`,
    `(?:until|till?|til|bis|ab|am|from|since|seit|back|on)\\s*${dotted}`,
    "(?:0?[1-9]|1[0-2])/(?:[12]\\d|3[01])(?:/(?:\\d{4}|\\d{2}))?",
    "\\d{1,2}\\s*(?:[-–]\\s*\\d{1,2}\\s*)?(?:days?|weeks?|wks?|months?|tagen?|wochen?|monaten?)",
    "(?:w/c|weeks?|wks?|kw|cw|days?|tag)\\s*\\d{1,2}(?!/)",
  ]
    .map((one) => `(?<!\\d)(?:${one})(?![\\d\\p{L}])`)
    .join("|"),
  "giu",
);

/** True for words of pain, illness or absence. */
export const saysWhy = (text: string): boolean =>
  saysAbsent(text) || symptomWords(text).length + hurtParts(text).length > 0;

/**
 * True for words that say why nothing was done, whatever day or rating they name: "out – back w/c 1 June",
 * "calf pain 4/10". Any other figure among them may be what was done.
 */
export function saysWhyNothing(text: string): boolean {
  if (!/^[^\p{L}\d]*\p{L}{2}/u.test(text) || !/\d/.test(text) || text.length > 200) return false;
  return saysWhy(text) && !/\d/.test(text.replace(told, ""));
}
