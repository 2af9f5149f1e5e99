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
  const touch = measured(touchName, "loss", rows);
  console.log(
    `\n${`${rows} set rows`.padEnd(28)}${["warm ms", "first ms", "× bare", "peak MB", "copies", "apart"].map((one) => one.padStart(11)).join("")}`,
  );
  for (const figure of figureNames) {
    const bare = measured(bareName, figure, rows);
    const bareMs = bare && "warmMs" in bare ? bare.warmMs : Number.NaN;
    console.log(figureWords[figure]);
    const add = (contender: string, one: ReturnType<typeof measured>, limitS = longestS) => {
      console.log(row(contender, one, bareMs, limitS));
      if (one && "warmMs" in one) found.push({ ...one, contender, figure, rows });
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

/** Null past the time limit. One that fails is named, and the others go on. */
function measured(
  name: string,
  figure: FigureName,
  rows: number,
  limitS = longestS,
): Measured | null | Error {
  try {
    const line = inChild(["--part", "one", name, figure, rows], limitS);
    return line === null ? null : (JSON.parse(line) as Measured);
  } catch (failure) {
    process.exitCode = 1;
    return failure as Error;
  }
}

function row(
  name: string,
  one: ReturnType<typeof measured>,
  bareMs: number,
  limitS: number,
): string {
  if (one instanceof Error) return `${words(name)}failed: ${one.message}`;
  if (one === null) {
    const least = (1000 * limitS) / bareMs;
    return `${words(name)}over ${limitS} s, over ${least.toFixed(0)} × bare by the clock`;
  }
  const { warmMs, firstMs, peakBytes, copies, apart } = one;
  const ratio = warmMs / bareMs;
  return `${words(name)}${cell(warmMs, 2)}${cell(firstMs, 2)}${cell(ratio, ratio < 100 ? 2 : 0)}${cell(peakBytes / 1e6, 1)}${cell(copies, 2)}${(apart === null ? "" : apart.toExponential(0)).padStart(11)}`;
}
