/** A typed day with its parts in the language's order, given in the order of a number format. */
export function inLanguagesOrder(text: string, pattern: string, language: string): string {
  const day = /^(\s*)(\d{1,2})([/.-])(\d{1,2})(?=\3|\s*$)/.exec(text);
  const bare = pattern.replace(/"[^"]*"|\\.|\[[^\]]*\]/g, "").toLowerCase();
  const [year, month, dayAt] = ["y", "m", "d"].map((letter) => bare.indexOf(letter)) as [
    number,
    number,
    number,
  ];
  // A format that begins with the year says nothing of the order of the two.
  if (!day || month < 0 || dayAt < 0 || (year >= 0 && year < Math.min(month, dayAt))) return text;
  if (month < dayAt === monthFirst(language)) return text;
  const [all, space, one, sign, other] = day;
  return `${space}${other}${sign}${one}${text.slice(all.length)}`;
}

function monthFirst(language: string): boolean {
  const parts = new Intl.DateTimeFormat(language, {
    day: "numeric",
    month: "numeric",
    year: "numeric",
  })
    .formatToParts(0)
    .map(({ type }) => type);
  return parts.indexOf("month") < parts.indexOf("day") && parts.indexOf("year") > 0;
}
