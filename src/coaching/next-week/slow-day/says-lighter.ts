/** Words beside a set for a heavy day or a lighter week (common practice, no source). */
const words = [
  "heavy|heavier|tired|fatigued?|exhausted|knackered|sluggish|grindy?|grinding|struggl(?:ed|ing)",
  "(?:bad|off|hard|rough) day|dead legs|legs (?:dead|gone|flat)|no energy",
  "(?:felt|feels|too|very) (?:hard|tough|flat|bad|rough|slow)|slow (?:day|today)|bar slow",
  "deload\\p{L}*|de-load|unload\\p{L}*|taper|(?:light|lighter|easy|down|recovery) week",
  "schwer|müde|zäh|schlapp|platt|erschöpft|entlastung\\p{L}*|leichte woche",
  // French, Spanish, Italian, Dutch and Swedish, of memory.
  "lourd\\p{L}*|fatiguée?|décharge|pesad[oa]s?|cansad[oa]|descarga|pesant[ei]|stanc[oa]|scarico|zwaar|vermoeid|tung[at]?|trött",
].join("|");
const lighter = new RegExp(`(?<!\\p{L})(?:${words})(?!\\p{L})`, "giu");
/** "not heavy", "no longer tired" */
const denied = /(?<!\p{L})(?:not?|never|without|less|nicht|keine?|ohne)\s+(?:\p{L}+\s+)?$/iu;

/** Whether words beside a set say why less was lifted: a day that felt heavy, or a lighter week. */
export const saysLighter = (note: string): boolean =>
  // Most rows have no note, and every row of a season is asked.
  note !== "" &&
  [...note.matchAll(lighter)].some(({ index }) => !denied.test(note.slice(0, index)));
