import { columnName } from "../rows/value/cell-address";

type Placed = { readonly tab: string };
type OfColumn = Placed & {
  readonly about: "meaning" | "unit" | "date order";
  /** From 1. */
  readonly column: number;
  readonly heading: string;
};
type OfTab = Placed & {
  readonly about: "scheme order" | "exercise" | "athlete" | "bar" | "set speed" | "speeds" | "runs";
  readonly written: string;
};

/** A question in one sentence, as the set-up view asks it. */
export function askWords(asked: OfColumn | OfTab): string {
  const { tab } = asked;
  switch (asked.about) {
    case "meaning":
      return asked.heading === ""
        ? `In ${tab}, what is column ${columnName(asked.column)}? It has no heading.`
        : `In ${tab}, what is “${asked.heading}”?`;
    case "unit":
      return `In ${tab}, in what unit is “${asked.heading}”?`;
    case "date order":
      return `In ${tab}, how are the dates of “${asked.heading}” written?`;
    case "scheme order":
      return `In ${tab}, which stands first beside the load?`;
    case "exercise":
      return `In ${tab}, which lift was done? The rows do not say.`;
    case "athlete":
      return `Whose rows are in ${tab}? They name no athlete.`;
    case "bar":
      return `In ${tab}, how heavy is the bar, in kg?`;
    case "set speed":
      return `In ${tab}, what is the one speed beside a load?`;
    case "speeds":
      return `In ${tab}, what are several speeds beside a load?`;
    case "runs":
      return `In ${tab}, what are the bare numbers?`;
  }
}

const mostTold = 3;

/** Questions that wait under Set up, told where somebody looks for what was not read; "" for none. */
export function waitingQuestions(asked: readonly (OfColumn | OfTab)[]): string {
  if (asked.length === 0) return "";
  const told = asked.slice(0, mostTold).map(askWords);
  const more = asked.length - told.length;
  return `To answer under Set up: ${told.join(" ")}${more > 0 ? ` And ${more} more.` : ""}`;
}

/** An answer as it stands in the list of what the coach said. */
export function answerLabel(answer: (OfTab | OfColumn) & { readonly said: string }): string {
  const { tab } = answer;
  // A meaning that is none: the column is left alone.
  const said = answer.said === "" ? "left alone" : answer.said;
  if ("heading" in answer) {
    const gone = answer.column === 0 ? " (no longer there)" : "";
    const column = answer.heading === "" ? `column ${answer.column}` : `“${answer.heading}”`;
    return `${tab}, ${column}${gone}: ${said}`;
  }
  const matters = {
    "scheme order": "beside the load",
    exercise: "the lift",
    athlete: "the athlete",
    bar: `the bar in “${answer.written}”, kg`,
    "set speed": "one speed",
    speeds: "several speeds",
    runs: "bare numbers",
  };
  return `${tab}, ${matters[answer.about]}: ${said}`;
}

/** What is asked for where the answer is typed. */
export const typedWords = {
  exercise: "Lift",
  athlete: "Athlete",
  bar: "Bar, kg",
} as const;
