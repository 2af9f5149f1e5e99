import { dayOfCell } from "../value/day-of-cell";
import type { LayoutContext } from "./layout-context";

const spelled = /\b(20\d\d)\b/;
const short =
  /(?:\b(?:spring|summer|autumn|fall|winter|season|saison|sommer|herbst|frühjahr|jahr)\s+|['’])(\d\d)\b/i;

/** The year a tab's name or its title lines give: "JUMP TESTS 2026", "summer 26"; null when none does. */
export function titleYear({
  cells,
  end,
  title,
}: Pick<LayoutContext, "cells" | "end" | "title">): number | null {
  const texts = [title];
  for (let row = 0; row < Math.min(end, 6); row++) {
    const line = cells[row]!;
    const words = line.filter(
      (cell): cell is string => typeof cell === "string" && cell.trim() !== "",
    );
    // A title stands alone in its row or leads it; dates give their year themselves.
    const titles = words.length <= 2 ? words : typeof line[0] === "string" ? [line[0]] : [];
    texts.push(...titles.filter((cell) => dayOfCell(cell) === null));
  }
  for (const text of texts) {
    const year = spelled.exec(text);
    if (year !== null) return Number(year[1]);
    const two = short.exec(text);
    if (two !== null) return 2000 + Number(two[1]);
  }
  return null;
}
