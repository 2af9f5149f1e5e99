import { limitingPain } from "../availability/who-may";

/** Words that are shown to the coach before anything is counted (common practice, no source). */
const words = [
  "ache|aches|aching|achy",
  "pain|pains|painful|hurt|hurts|hurting",
  "injur(?:y|ed|ies)|niggle|niggles|niggling|strain|strained|sprain|sprained",
  "sore|soreness|stiff|stiffness|tender|tenderness|swelling|swollen|limp|limps|limping",
  "ill|illness|sick|fever|feverish|flu|virus|infection|antibiotics",
  "cough|coughing|cold|throat|chest|nausea|nauseous|vomit|vomited|vomiting|diarrhoea",
  "(?:rolled|twisted|turned|went over)(?: (?:an?|my|his|her|the|left|right))* ankles?",
  "(?:tweaked|pulled|twisted)(?: (?:an?|my|his|her|the|left|right))* (?:knee|calf|hamstring|hammy|quad|groin|back|hip)",
  "dizzy|dizziness|faint|fainted|palpitations|concussion",
  "stress fracture|numb|numbness|tingling|unwell|poorly|stomach|bug|headaches?|migraine|covid",
  // French, Spanish, Italian, Dutch and Swedish, of memory.
  "douleurs?|malade|fièvre|blessée?|blessure|dolor|enferm[oa]|fiebre|lesi[oó]n|dolore|malat[oa]|febbre",
  "pijn|ziek|koorts|geblesseerd|sjuk|feber|skadad",
  // German, where compounds carry the word at either end: Knieschmerzen, Brustdrücken, not schmerzfrei.
  "\\p{L}*(?:schmerz|verletz)(?!\\p{L}*frei)\\p{L}*|(?:kopf|hals|bauch)?weh|zwickt|zwicken|zieht",
  "muskelkater|zerrung|gezerrt|verstaucht|umgeknickt|steif|geschwollen|schwellung|humpel\\p{L}*|hinkt",
  "krank|krankheit|fieber|fiebrig|grippe|infekt|erkältet|erkältung|husten|brust(?!schw)\\p{L}*",
  "übelkeit|übel|erbrochen|durchfall|schwindel|schwindlig|ohnmächtig|taub|kribbeln|ermüdungsbruch",
].join("|");
const symptom = new RegExp(`(?<![\\p{L}])(?:${words})(?![\\p{L}])`, "giu");
/** "no pain" and "pain-free" say that there is none. */
const denied = /(?<!\p{L})(?:no|not|without|zero|keine?|ohne|nicht)\s+(?:more\s+)?$/iu;
const free = /^[\s-](?:free|frei)(?!\p{L})/iu;
/** "Pain 0–10: 2": a rating of ten behind the word. */
const rating = /^[^;:.]*:\s*(\d{1,2})(?:[.,]\d+)?(?:\s*(?:\/|of|von)\s*10)?\s*(?:[;.]|$)/iu;

/**
 * Words of pain or illness in a note, as written, in order; a word that is only denied, or rated slight, is left out.
 * It errs on the side of showing: a coach reads past one note too many, not past one too few.
 */
export function symptomWords(note: string): readonly string[] {
  // Most rows have no note, and every row of a season is asked.
  if (note === "") return [];
  const found: string[] = [];
  for (const match of note.matchAll(symptom)) {
    const before = note.slice(0, match.index);
    const after = note.slice(match.index + match[0].length);
    if (denied.test(before) || free.test(after)) continue;
    // Rated so low that a site limits nothing.
    if (Number(rating.exec(after)?.[1] ?? limitingPain) < limitingPain) continue;
    if (!found.includes(match[0].toLowerCase())) found.push(match[0].toLowerCase());
  }
  return found;
}
