import { effortWords } from "../../value/reserve-in-words";
import { unitOf, withPoundSign } from "../../value/units";
import { leastLoad } from "./scheme";

/** The words and figures of a cell of sets one by one, and what stands in brackets or rates the effort. */
export function tokensOf(cell: string): {
  readonly tokens: readonly string[];
  readonly notes: string[];
} {
  const notes: string[] = [];
  // "3x5 80 RPE 8": its figure is no load and no speed.
  const left = withPlainUnits(cell).replace(effortWords, (words) => {
    notes.push(words.replace("@", ""));
    return " ";
  });
  const text = left
    .replace(/\(([^()]*)\)/g, (_, words: string) => {
      // "80x5 (0.62)" gives the set's speed, "(bar slipped)" is a note.
      if (bracketedSpeed.test(words)) return ` @${words.trim()} `;
      notes.push(words.trim());
      return " ";
    })
    .replace(/[×✕*]/g, "x")
    .replace(repsAtLoad, (all, reps: string, load: string, unit = "") =>
      // "3x5 80 @ 10" ends with an effort.
      load === "10" && Number(reps) >= leastLoad ? all : `${reps}${unit}x${load}`,
    )
    .replace(/(\d)\s*(kg|lbs?)(?=x|\b)/gi, "$1$2")
    .replace(/(\d(?:kg|lbs?)?)\s*x\s*(?=\d)/gi, "$1x")
    .replace(/\s*@\s*/g, " @")
    .replace(/(\d)\s*\+\s*(\d)/g, "$1+$2");
  return { tokens: text.split(/[\s;]|,\s|,$/).filter((token) => token !== ""), notes };
}

const withPlainUnits = (cell: string): string =>
  withPoundSign(cell).replace(
    /(?<=\d\s*)(?:kgs|kilos?|pounds?)(?![a-z])/gi,
    (word) => unitOf(word)!.name,
  );

const bracketedSpeed = /^\s*@?\s*[01]?[.,]\d{1,3}(?:\s*m\/s)?\s*$/i;
/** "5@60" is five repetitions at 60. */
const repsAtLoad = /(?<![\dx@.,])(\d{1,2})\s*@\s*(\d{2,3}(?:[.,]\d+)?)(kg|lbs?)?(?![\dx%.])/gi;
