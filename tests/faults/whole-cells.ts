/** What stands in each cell, by tab. */
export type Cells = Readonly<Record<string, readonly (readonly string[])[]>>;

/**
 * What is not whole: cells that hold neither what stood there before an action nor what it leaves, and lines that stand
 * twice in the Next week tab. Rows read in part give other lines than all rows; then only cells that
 * held something are looked at. As "Sets 3,4: 60 is neither 50 nor 55".
 */
export function standsWhole(now: Cells, before: Cells, after: Cells, onlyFilled = false): string[] {
  const wrong: string[] = [];
  for (const [tab, rows] of Object.entries(now)) {
    rows.forEach((row, i) => {
      row.forEach((cell, j) => {
        const [was, will] = [before, after].map((cells) => cells[tab]?.[i]?.[j] ?? "");
        if (cell !== was && cell !== will && !(onlyFilled && was === ""))
          wrong.push(`${tab} ${i + 1},${j + 1}: ${cell} is neither ${was} nor ${will}`);
      });
    });
  }
  for (const tab of Object.keys(before)) if (!(tab in now)) wrong.push(`${tab} is gone`);
  const lines = (now["Next week"] ?? []).flatMap((row) =>
    row.filter((cell) => /^\d{4}-\d{2}-\d{2} .+ \d+$/.test(cell)),
  );
  if (new Set(lines).size < lines.length) wrong.push("a line stands twice");
  return wrong;
}
