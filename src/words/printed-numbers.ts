import { poundsFromKg } from "../coaching/units/mass";
import type { DecimalMark } from "../rows/value/decimal-mark";
import { trimmed } from "./reasons-figures";

/** How a squad writes numbers: unit of mass and decimal mark. */
export type NumberStyle = { readonly unit: "kg" | "lb"; readonly mark: DecimalMark };

/** Figures for cell, screen and paper, as the coach's own rows write them. */
export type PrintedNumbers = NumberStyle & {
  /** Unit and mark alone, to be sent. */
  readonly style: NumberStyle;
  /** A mass given in kg as a number in the coach's unit, and the same to more decimals than plates tell apart. */
  readonly amount: (kg: number) => number;
  readonly exact: (kg: number) => number;
  /** A mass given in kg, without its unit: "67.5", "67,5", "148.8". */
  readonly mass: (kg: number) => string;
  /** The same with its unit: "67,5 kg". */
  readonly withUnit: (kg: number) => string;
  /** m/s with two decimals. */
  readonly speed: (speed: number) => string;
  readonly cm: (cm: number) => string;
  /** A sentence whose figures were written with points. */
  readonly marked: (sentence: string) => string;
  /** A sentence whose masses were written in kg, too. What it quotes stays as the coach typed it. */
  readonly told: (sentence: string) => string;
};

export function printedNumbers({ unit, mark }: NumberStyle): PrintedNumbers {
  const marked = (text: string) => withMark(text, mark);
  const inPounds = unit === "lb";
  // Pound plates come in quarters; a kilogram plate seen in pounds needs no more than one decimal.
  const to = (kg: number, decimals: number) =>
    Number((inPounds ? poundsFromKg(kg) : kg).toFixed(decimals));
  const amount = (kg: number) => to(kg, inPounds ? 1 : 2);
  const mass = (kg: number) => marked(trimmed(amount(kg), 2));
  return {
    style: { unit, mark },
    unit,
    mark,
    amount,
    exact: (kg) => to(kg, 6),
    mass,
    withUnit: (kg) => `${mass(kg)} ${unit}`,
    speed: (speed) => marked(speed.toFixed(2)),
    cm: (cm) => marked(trimmed(cm, 1)),
    marked,
    told: (text) =>
      marked(
        inPounds
          ? text.replace(/“[^”]*”|((?:\d[\d.]* to )?\d[\d.]*) kg\b/g, (whole, masses?: string) =>
              masses === undefined
                ? whole
                : `${masses.replace(/\d[\d.]*/g, (kg) => String(amount(Number(kg))))} lb`,
            )
          : text,
      ),
  };
}

/** As the words themselves are written. */
export const plainNumbers = printedNumbers({ unit: "kg", mark: "." });

/** A text whose figures were written with points, in the coach's decimal mark; quoted cells stay. */
export function withMark(text: string, mark: NumberStyle["mark"]): string {
  return mark === "."
    ? text
    : text.replace(/“[^”]*”|(\d)\.(?=\d)/g, (whole, digit?: string) =>
        digit === undefined ? whole : `${digit}${mark}`,
      );
}
