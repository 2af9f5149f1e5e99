import { poundsFromKg } from "../coaching/units/mass";
import { trimmed } from "./reasons-figures";

/** How a squad writes numbers: unit of mass and decimal mark. */
export type NumberStyle = { readonly unit: "kg" | "lb"; readonly mark: "." | "," };

/** Figures for paper, as the coach's own rows write them. */
export type PrintedNumbers = {
  readonly unit: "kg" | "lb";
  readonly mark: "." | ",";
  /** A mass given in kg, without its unit: "67.5", "67,5", "148.8". */
  readonly mass: (kg: number) => string;
  /** m/s with two decimals. */
  readonly speed: (speed: number) => string;
  readonly cm: (cm: number) => string;
  /** A sentence whose figures were written with points. */
  readonly marked: (sentence: string) => string;
};

export function printedNumbers({ unit, mark }: NumberStyle): PrintedNumbers {
  const marked = (text: string) => withMark(text, mark);
  return {
    unit,
    mark,
    // Pound plates come in quarters; a kilogram plate seen in pounds needs no more than one decimal.
    mass: (kg) => marked(trimmed(unit === "lb" ? poundsFromKg(kg) : kg, unit === "lb" ? 1 : 2)),
    speed: (speed) => marked(speed.toFixed(2)),
    cm: (cm) => marked(trimmed(cm, 1)),
    marked,
  };
}

/** A text whose figures were written with points, in the coach's decimal mark. */
export function withMark(text: string, mark: NumberStyle["mark"]): string {
  return mark === "." ? text : text.replace(/(\d)\.(?=\d)/g, `$1${mark}`);
}
