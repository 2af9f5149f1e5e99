import {
  asPrintedName,
  bareName,
  builtInName,
  contenders,
  formulaName,
  printsMore,
  touchName,
} from "./contenders";
import { type FigureName, figureNames, figureWords } from "./figures";
import type { Found } from "./found";
import { inChild } from "./in-child";
import type { Measured } from "./measured";
import { formulas } from "./product";

const longestS = 600;
/** Past these rows the built-in formulas take hours; past these seconds they are let go. */
const builtInUpTo = 30_000;
/** Less than the two minutes after which the grid gives up by itself. */
const builtInS = 90;

const cell = (value: number, digits: number) => value.toFixed(digits).padStart(11);
const words = (name: string) => `  ${name}`.padEnd(28);

/** Measures all contenders over so many rows, one process each, and prints a row for each. */
export function sizeTable(rows: number): readonly Found[] {
  const found: Found[] = [];
  const touch = measured(touchName, "loss", rows) as Measured;
  console.log(
    `\n${`${rows} set rows`.padEnd(28)}${["warm ms", "first ms", "× bare", "peak MB", "copies", "apart"].map((one) => one.padStart(11)).join("")}`,
  );
  for (const figure of figureNames) {
    const bare = measured(bareName, figure, rows) as Measured;
    console.log(figureWords[figure]);
    const add = (contender: string, one: Measured | null, limitS = longestS) => {
      console.log(row(contender, one, bare.warmMs, limitS));
      if (one) found.push({ ...one, contender, figure, rows, bareMs: bare.warmMs });
    };
    add(touchName, touch);
    add(bareName, bare);
    for (const name of Object.keys(contenders)) {
      if (name === touchName || name === bareName) continue;
      if (name === asPrintedName && !printsMore[figure]) continue;
      add(name === formulaName ? formulas[figure].name : name, measured(name, figure, rows));
    }
    if (rows <= builtInUpTo) {
      add(builtInName, measured(builtInName, figure, rows, builtInS), builtInS);
    }
  }
  // Of the built-in formulas the grid's own free space is another matter.
  const free = found.filter(({ contender }) => contender !== builtInName);
  const most = Math.max(...free.map(({ freeBytes }) => freeBytes)) / 1e6;
  console.log(
    `Peak: memory taken from the system in the first run; up to ${most.toFixed(0)} MB were held free before it.`,
  );
  return found;
}

function measured(
  name: string,
  figure: FigureName,
  rows: number,
  limitS = longestS,
): Measured | null {
  const line = inChild(["--part", "one", name, figure, rows], limitS);
  return line === null ? null : (JSON.parse(line) as Measured);
}

function row(name: string, one: Measured | null, bareMs: number, limitS: number): string {
  if (one === null) {
    const least = (1000 * limitS) / bareMs;
    return `${words(name)}over ${limitS} s, over ${least.toFixed(0)} × bare by the clock`;
  }
  const { warmMs, firstMs, peakBytes, copies, apart } = one;
  const ratio = warmMs / bareMs;
  return `${words(name)}${cell(warmMs, 2)}${cell(firstMs, 2)}${cell(ratio, ratio < 100 ? 2 : 0)}${cell(peakBytes / 1e6, 1)}${cell(copies, 2)}${(apart === null ? "" : apart.toExponential(0)).padStart(11)}`;
}
