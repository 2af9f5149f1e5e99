/** A part of the body that takes exercises out while it limits an athlete. */
export type BodyPart = "foot" | "leg" | "trunk" | "arm";

const word = (pattern: string) => new RegExp(`(?<!\\p{L})(?:${pattern})(?!\\p{L})`, "iu");

/** Words coaches write as a site, German ones too, which run on as compounds (common practice, no source). */
const words: readonly (readonly [BodyPart, RegExp])[] = [
  [
    "foot",
    word(
      "achilles\\p{L}*|cal(?:f|ves)|ankles?|f(?:oo|ee)t|heels?|toes?|plantar|f[uü](?:ß|ss)\\p{L}*|ferse\\p{L}*|zehe\\p{L}*|waden?|knöchel|sprunggelenk\\p{L}*",
    ),
  ],
  [
    "leg",
    word(
      "shins?|tibial?|fibula|femur|schienbein\\p{L}*|knees?|patella\\p{L}*|hamstrings?|quads?|quadri[cz]eps|thighs?|groins?|addu[ck]tor\\p{L}*|hips?|glute\\p{L}*|legs?|knie\\p{L}*|oberschenkel\\p{L}*|unterschenkel\\p{L}*|leiste\\p{L}*|hüft\\p{L}*|gesäß\\p{L}*|beine?",
    ),
  ],
  [
    "trunk",
    word(
      "back|lumbar|spine|neck|ribs?|abs|abdom\\p{L}*|trunk|rücken\\p{L}*|lws|hws|nacken|rippen?|bauch\\p{L}*|rumpf",
    ),
  ],
  [
    "arm",
    word(
      "shoulders?|elbows?|wrists?|hands?|fingers?|thumbs?|arms?|collarbone|schulter\\p{L}*|ellenbogen|handgelenke?|hände|daumen|arme|schlüsselbein",
    ),
  ],
];

/** The parts of the body that a site names; none for words we do not know. */
export const bodyParts = (site: string): readonly BodyPart[] =>
  words.flatMap(([part, said]) => (said.test(site) ? [part] : []));
