const between = /\s*(?:[;,/&+]|(?<!\p{L})(?:and|und)(?!\p{L}))\s*/iu;

/** Each of those one cell of a race names: "Ilka Brandmoor; Tomas Reyerson", "track & road". */
export const namedRunners = (who: string): readonly string[] =>
  who.split(between).filter((part) => part !== "");
