/** First of the words that only programs say which no cell said before; undefined when there is none. */
export function programWord(text: string, cells: unknown): string | undefined {
  const words = text.match(/undefined|NaN|Infinity|\[object|null/g) ?? [];
  if (words.length === 0) return undefined;
  const given = textOf(cells);
  return words.find((word) => !given.includes(word));
}

function textOf(value: unknown): string {
  return Array.isArray(value) ? value.map(textOf).join("\t") : String(value);
}
