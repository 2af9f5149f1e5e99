import { bodyParts } from "../availability/body-part";
import { limitingPain } from "../availability/who-may";

const sides =
  /(?<!\p{L})(?:left|right|both|[lr]|li|re|linke?[rs]?|rechte?[rs]?|beide)(?!\p{L})\.?/giu;
const places =
  /(?<!\p{L})(?:my|the|again|still|wieder|lower|upper|inner|outer|tendons?|muscles?|fascia|flexors?)(?!\p{L})/giu;
/** Without a side many a part is a label of a session, "legs", or a word of another sense, "back". */
const alone =
  /^(?:achilles\p{L}*|calf|shins?|knee|ankle|hip|groin|hamstring|heel|plantar|patella|wade|schienbein\p{L}*|knie|hüfte|leiste|ferse|knöchel|sprunggelenk)$/u;
/** Asked about at every grade, as they take jumps out at every one. */
const atEveryGrade = /achilles|cal(?:f|ves)|waden?(?!\p{L})|shin|schienbein/iu;
const rating = /\s*[:=–-]?\s*(\d{1,2})(?:[.,]5)?\s*(?:\/|of|out of|von)\s*10$/iu;
/** "Left calf. Fine now." */
const over =
  /^(?:(?:all|now|feels?|is|wieder|jetzt|alles)\s+)*(?:fine|ok(?:ay)?|good|gone|better|gut|weg|besser)(?!\p{L})/iu;
const longest = 80;

/**
 * Parts of the body that a note names and nothing else, "left calf", or with a rating, "achilles 3/10":
 * nobody writes them down for another reason. "Calf raise" and "calf fine" say more, and are none.
 */
export function hurtParts(note: string): readonly string[] {
  const sentences = note.split(/[.;!]\s+|[.;!]$|\n/).map((one) => one.trim());
  if (sentences.some((one) => over.test(one))) return [];
  return sentences.flatMap((sentence) => {
    if (sentence === "" || sentence.length > longest) return [];
    const pieces = sentence
      .toLowerCase()
      .split(/\s*(?:[,+&/](?!\s*10)|(?<!\p{L})(?:and|und)(?!\p{L}))\s*/u);
    return pieces.every(isHurtPart) ? pieces.filter(hurts) : [];
  });
}

/** A part alone, whatever its grade. */
function isHurtPart(piece: string): boolean {
  const named = piece.replace(rating, "").replace(/[()]/g, " ").trim();
  const sided = named.replace(sides, " ");
  const [part = "", ...more] = sided.replace(places, " ").trim().split(/\s+/);
  if (more.length > 0 || part === "") return false;
  if (alone.test(part)) return true;
  return (sided !== named || named !== piece || / /.test(named)) && bodyParts(part).length > 0;
}

function hurts(piece: string): boolean {
  const grade = Number(rating.exec(piece)?.[1] ?? limitingPain);
  return grade >= (atEveryGrade.test(piece) ? 1 : limitingPain);
}
