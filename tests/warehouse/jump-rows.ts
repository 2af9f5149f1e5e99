import type { Cells } from "../../src/rows/cells";

export const jumpTest = "box jump";
const dayMs = 86_400_000;

/** An invented squad's jump tests, weekly: a box jump's height, and a drop jump timed now and then. */
export function jumpRows(athletes: readonly string[], weeks: number): Cells {
  const rows: unknown[][] = [
    [
      "date",
      "athlete",
      "test",
      "height cm",
      "flight time s",
      "contact time s",
      "landing height cm",
    ],
  ];
  for (let week = 0; week < weeks; week++) {
    const day = new Date(Date.UTC(2019, 0, 7) + 7 * week * dayMs);
    for (const [at, athlete] of athletes.entries()) {
      // Every third loses height after the first half, so that not all answers say the same.
      const lost = at % 3 === 0 && week > weeks / 2 ? 4 : 0;
      const wobble = ((week * 7 + at * 3) % 5) * 0.4;
      rows.push([day, athlete, jumpTest, 44 + at - lost + wobble, "", "", ""]);
      if (week % 4 === 0) rows.push([day, athlete, "drop jump", "", 0.5 + at / 200, 0.18, ""]);
    }
  }
  return rows;
}
