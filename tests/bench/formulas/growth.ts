import { touchName } from "./contenders";
import { figureNames } from "./figures";
import type { Found } from "./found";

const cell = (text: string) => text.padStart(11);

/** How the warm time grows, as a power of the rows; small sizes are partly a call's fixed cost. */
export function growth(found: readonly Found[], sizes: readonly number[]): string {
  const to = sizes.at(-1) ?? 0;
  const froms = sizes.slice(0, -1).slice(0, 2);
  if (froms.length === 0) return "";
  const lines = [
    `\nGrowth to ${to} rows, power of the rows`.padEnd(47) +
      froms.map((from) => cell(`from ${from}`)).join(""),
  ];
  for (const figure of figureNames) {
    const own = found.filter((one) => one.figure === figure);
    for (const contender of new Set(own.map((one) => one.contender))) {
      if (contender === touchName && figure !== "loss") continue;
      const at = (rows: number) =>
        own.find((one) => one.contender === contender && one.rows === rows)?.warmMs;
      const last = at(to);
      if (last === undefined) continue;
      const powers = froms.map((from) => {
        const first = at(from);
        return first === undefined ? "" : (Math.log(last / first) / Math.log(to / from)).toFixed(2);
      });
      lines.push(
        `  ${(contender === touchName ? "" : `${figure}: `) + contender}`.padEnd(46) +
          powers.map(cell).join(""),
      );
    }
  }
  return lines.join("\n");
}
