/** The usual cautions, beside every proposal and on every card: two lines. */
export const cautions = [
  "Lift inside a rack with safeties, on sound plates; stacked plates must not slide. Local rules and licensed practice come first.",
  "Bone pain, night pain, chest symptoms, dizziness or limping: stop, see a doctor or physiotherapist. This is not medical advice.",
] as const;
