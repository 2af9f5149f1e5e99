/** Columns of text side by side, numbers to the right, two spaces between. */
export function textTable(rows: readonly (readonly string[])[], headings = true): string {
  const columns = Math.max(0, ...rows.map((row) => row.length));
  const body = headings ? rows.slice(1) : rows;
  const widths = Array.from({ length: columns }, (_, column) =>
    Math.max(0, ...rows.map((row) => width(row[column] ?? ""))),
  );
  const toRight = widths.map((_, column) => {
    const filled = body.map((row) => row[column] ?? "").filter((text) => !/^–?$/.test(text));
    return filled.length > 0 && filled.every((text) => /^[+−-]?[\d.,]+(?:\s?%)?$/.test(text));
  });
  const lines = rows.map((row) =>
    widths
      .map((most, column) => {
        const text = row[column] ?? "";
        const gap = " ".repeat(most - width(text));
        return toRight[column] ? gap + text : text + gap;
      })
      .join("  ")
      .trimEnd(),
  );
  if (headings && lines.length > 0) {
    const rule = "─".repeat(Math.max(...lines.map(width)));
    lines.splice(1, 0, rule);
  }
  return `${lines.join("\n")}\n`;
}

/** Signs on the screen: marks that sit on the letter before take no room. */
export function width(text: string): number {
  return [...text.normalize("NFC").replace(/\p{Mn}/gu, "")].length;
}
