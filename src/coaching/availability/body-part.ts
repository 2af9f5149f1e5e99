/** A part of the body that takes exercises out while it limits an athlete. */
export type BodyPart = "foot" | "leg" | "trunk" | "arm";

/** Words coaches write as a site (common practice, no source). */
const words: readonly (readonly [BodyPart, RegExp])[] = [
  ["foot", /\b(achilles|cal(f|ves)|ankles?|f(oo|ee)t|heels?|toes?|plantar)\b/i],
  [
    "leg",
    /\b(knees?|patella\w*|hamstrings?|quads?|quadriceps|thighs?|groins?|adductors?|hips?|glute\w*|legs?)\b/i,
  ],
  ["trunk", /\b(back|lumbar|spine|neck|ribs?|abs|abdom\w*|trunk)\b/i],
  ["arm", /\b(shoulders?|elbows?|wrists?|hands?|fingers?|thumbs?|arms?|collarbone)\b/i],
];

/** The parts of the body that a site names; none for words we do not know. */
export const bodyParts = (site: string): readonly BodyPart[] =>
  words.flatMap(([part, said]) => (said.test(site) ? [part] : []));
