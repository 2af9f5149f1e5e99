import type { SetUpAnswer, SetUpQuestion, SetUpView } from "../actions/messages";
import type { Ask } from "./state";

type Asked = Pick<SetUpQuestion, "tabId" | "about"> &
  ({ readonly heading: string; readonly column: number } | { readonly written: string });

/** Sends an answer: to a question, or in place of an earlier answer. */
export function answerAsk(asked: Asked, answer: string): Ask {
  const { tabId, about } = asked;
  if ("written" in asked) {
    const message = { tabId, about, written: asked.written, answer: answer.trim() };
    return { name: "answerTab", message };
  }
  const part =
    about === "meaning"
      ? { field: answer === "" ? null : answer }
      : about === "unit"
        ? { unit: answer }
        : { dateOrder: answer };
  const { heading, column } = asked;
  return { name: "answerColumn", message: { tabId, heading, column, ...part } };
}

/** Forgets an answer. */
export function forgetAsk(answer: SetUpAnswer): Ask {
  const { tabId, about } = answer;
  return "written" in answer
    ? { name: "forgetTab", message: { tabId, about, written: answer.written } }
    : { name: "forgetColumn", message: { tabId, about, column: answer.column, tag: answer.tag } };
}

/** An answer as it is sent; what was said stands in words. A lift, a name and a mass are their own words. */
export function chosenOf({ said, choices }: Pick<SetUpAnswer, "said" | "choices">): string {
  if (choices.length === 0) return said;
  return choices.find(({ answer, words }) => words === said || answer === said)?.answer ?? "";
}

/**
 * What takes an answer back, or a forgetting: what was remembered before stands again. The workbook's
 * own Undo knows cells only, and an answer changes none.
 *
 * @param before Set up as it was shown before; null when it was not shown yet
 * @param after Set up as answered; null when a name was answered, which is told by itself
 * @returns null when the ask was no answer, or nothing was there to be forgotten
 */
export function takesBack(
  { name, message }: Ask,
  before: SetUpView | null,
  after: SetUpView | null,
): Ask | null {
  const of = (view: SetUpView | null) => view?.answered.find((one) => isAbout(one, name, message));
  switch (name) {
    case "answerTable":
    case "forgetTable": {
      const { tabId } = message;
      const earlier = before?.tabs.find((tab) => tab.tabId === tabId && tab.found === "said");
      if (earlier) return { name: "answerTable", message: { tabId, table: earlier.table } };
      return name === "answerTable" ? { name: "forgetTable", message: { tabId } } : null;
    }
    case "answerTab":
    case "answerColumn": {
      const earlier = of(before);
      if (earlier) return answerAsk(earlier, chosenOf(earlier));
      const now = of(after);
      return now ? forgetAsk(now) : null;
    }
    case "forgetTab":
    case "forgetColumn": {
      const earlier = of(before);
      // A column that is no longer there cannot be answered for again.
      const gone = earlier && "column" in earlier && earlier.column === 0;
      return earlier && !gone ? answerAsk(earlier, chosenOf(earlier)) : null;
    }
    case "answerName": {
      const { written, athlete, same } = message;
      return { name: "forgetName", message: same ? { written } : { written, athlete } };
    }
    case "forgetName": {
      const { written, athlete } = message;
      const earlier = before?.names.find(
        (one) => one.spelling === written && (athlete === undefined || one.athlete === athlete),
      );
      if (!earlier) return null;
      const { same } = earlier;
      return { name: "answerName", message: { written, athlete: earlier.athlete, same } };
    }
    case "answerSet":
      return { name: "forgetSet", message };
    case "forgetSet":
      return { name: "answerSet", message };
    default:
      return null;
  }
}

function isAbout(answer: SetUpAnswer, name: string, message: Ask["message"]): boolean {
  if (answer.tabId !== message.tabId) return false;
  if ("written" in answer) {
    return answer.about === message.about && answer.written === message.written;
  }
  const { about } =
    name === "answerColumn"
      ? {
          about: "field" in message ? "meaning" : "unit" in message ? "unit" : "date order",
        }
      : message;
  return answer.about === about && answer.column === message.column;
}
