const word = (pattern: string) => `(?<!\\p{L})(?:${pattern})(?!\\p{L})`;

/** That somebody is not there, or cannot train (common practice, no source; other languages of memory). */
const absent = word(
  [
    "absen\\p{L}*|away|holidays?|vacation|(?:on|annual|sick|parental|maternity) leave|abroad|camp|trip|travell?ing|exams?",
    "injur(?:y|ed|ies)|unable|unavailable|unfit|rehab|physio\\p{L}*|hospital|surgery|operation",
    "not (?:available|here|in|there|fit|training)|(?:can'?t|can’t|cannot|can not|no) (?:train\\p{L}*|lift\\p{L}*|make it)",
    "abwesen\\p{L}*|reise|urlaub|ferien|verreist|trainingslager|lehrgang|klassenfahrt|prüfung\\p{L}*|reha|krankenhaus",
    "verletzt|verletzung|krankgeschrieben|krank gemeldet|nicht (?:da|dabei|fit)|kann nicht|fällt aus|pausiert",
    "vacances|vacaciones|vacanze|vakantie|afwezig|borta|lesionad[oa]|infortunat[oa]|blessée?|geblesseerd|skadad",
  ].join("|"),
);
const ends = "until|till?|til|bis|next|nächste\\p{L}*|w/c|back|zurück";
const goesOn = `${ends}|to|from|for|since|seit|ab|due|this|all|diese\\p{L}*|sick|ill|injured`;
/** "Out" and "off" are cues, too, and "out and back" is a run: they say it at the beginning alone, or with what goes on. */
const leading = `(?:^|;\\s*)(?:out|weg|fort)(?:$|\\s*[-–—,;:(/.]|\\s+(?:${goesOn}|with)(?!\\p{L}))|(?:^|;\\s*)off\\s*(?:[-–—,;:(/]\\s*)?(?:${goesOn})(?!\\p{L})`;
const inPlace = new RegExp(`${leading}|${absent}`, "iu");

const begun = "(?:^|[.;,:(–—-]\\s*|(?<!\\p{L})(?:is|am|be|bin|ist|i'm|i’m)\\s+)";
const times =
  "holidays?|vacation|leave|camp|abroad|exams?|urlaub|ferien|verreist|trainingslager|lehrgang|klassenfahrt";
const toCome = new RegExp(
  `${begun}(?:out|off|weg|fort|away|absent|abwesend)\\s*[-–—,(]?\\s*(?:${ends}|\\d)|${begun}(?:away|absent|abwesend) (?:from|ab)|${word(times)}.{0,20}?(?:${word(`${ends}|from|ab`)}|\\d)|${word("(?:next|nächste\\p{L}*|from|ab) (?:\\d|week|month|woche|monat|mon|tue|wed|thu|fri|sat|sun|die|mit|don|fre|sam)\\S*")}.{0,25}?${word(`away|weg|nicht da|${times}`)}`,
  "iu",
);

/** Words that speak of a past as often as of now: alone in a cell they are of now. */
const history = new RegExp(
  word("injur(?:y|ies)|physio\\p{L}*|hospital|surgery|operation|trip|verletzung|exams?"),
  "iu",
);
const standing = new RegExp(
  `^(?:(?:is|currently|still|on|at|am|im|in|ist|noch)\\s+)*(?:${absent}|${word("out|off|ill|sick|weg|fort|krank")})\\s*(?:$|[-–—,;(/])`,
  "iu",
);

/** Whether words that stand beside no day, as in a list of athletes, say that somebody is away now. */
export function saysAwayNow(text: string): boolean {
  const words = text.trim();
  const [begins] = standing.exec(words) ?? [];
  if (begins === undefined) return toCome.test(words);
  return begins.length === words.length || !history.test(begins);
}

/** Whether words that stand where something done would stand say that the athlete was not there, or could not. */
export const saysAbsent = (text: string): boolean => inPlace.test(text.trim());

/** Whether words beside something done say that the athlete will be away: they name a beginning or an end. */
export const saysAway = (text: string): boolean => toCome.test(text.trim());
