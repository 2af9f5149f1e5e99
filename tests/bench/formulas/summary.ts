import { asPrintedName, bareName, touchName } from "./contenders";
import { figureNames } from "./figures";
import type { Found } from "./found";
import { formulas } from "./product";

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

/** The formulas against what is aimed at: 3 × the bare pass, ahead of every peer, one copy of the rows. */
export function verdict(found: readonly Found[], sizes: readonly number[]): string {
  const lines = [
    `\n${"Formula ÷ bare pass, warm".padEnd(46)}${sizes.map((rows) => cell(`${rows}`)).join("")}`,
  ];
  const hand = new Set([touchName, bareName, asPrintedName]);
  for (const figure of figureNames) {
    const { name } = formulas[figure];
    const at = (rows: number) => found.filter((one) => one.figure === figure && one.rows === rows);
    const own = (rows: number) => at(rows).find(({ contender }) => contender === name);
    const add = (words: string, value: (rows: number) => number | undefined) =>
      lines.push(
        `  ${words}`.padEnd(46) +
          sizes.map((rows) => cell(value(rows)?.toFixed(2) ?? "–")).join(""),
      );
    const ratio = (rows: number, other: Found | undefined) => {
      const one = own(rows);
      return one && other ? one.warmMs / other.warmMs : undefined;
    };
    const by = (contender: string) => (rows: number) =>
      ratio(
        rows,
        at(rows).find((one) => one.contender === contender),
      );
    add(name, by(bareName));
    if (at(sizes[0] ?? 0).some(({ contender }) => contender === asPrintedName)) {
      add("  ÷ bare pass for the figure it prints", by(asPrintedName));
    }
    add("  ÷ quickest peer, rows not loaded before", (rows) =>
      ratio(
        rows,
        at(rows)
          .filter(
            ({ contender }) =>
              contender !== name && !hand.has(contender) && !/loaded/.test(contender),
          )
          .sort((a, b) => a.warmMs - b.warmMs)[0],
      ),
    );
    add("  copies of the rows at the peak", (rows) => own(rows)?.copies);
  }
  return lines.join("\n");
}
