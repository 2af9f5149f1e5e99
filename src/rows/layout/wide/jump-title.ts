import { plainWords } from "../../header/header-words";
import { type Unit, unitOf } from "../../value/units";

export type JumpPart = "contact" | "flight" | "height" | "stack";

/** What a block's title says its cells hold. */
export type JumpTitle = {
  readonly test: string;
  /** Figures in the order they stand in a cell ("contact ms / flight s"); empty: stack or height. */
  readonly parts: readonly { readonly part: JumpPart; readonly unit: Unit | null }[];
  /** Height dropped from, cm. */
  readonly dropCm: number | null;
  /** Plates landed on, as written, when the landing is raised. */
  readonly landingStack: string | null;
  readonly landingCm: number | null;
  /** Unit of length in brackets or at the end: "Box jump (in)"; null when none is named. */
  readonly unit: Unit | null;
};

const partWord =
  /\b(ground contact|contact|kontakt(?:zeit)?|flight|flugzeit|flug|height|hohe|ht)\b(?: time)? ?[([]? ?(ms|s|sec|cm|m|mm|in)?\b/g;

/** Reads "2) drop jump 30 to floor: contact ms / flight s", "1) straight-leg box – best clean". */
export function jumpTitle(text: string): JumpTitle {
  const bare = text.replace(/^\s*\d+\s*[).:]/, "").trim();
  const [name, spec = ""] = bare.split(":", 2);
  const words = plainWords(bare);
  const parts = [...plainWords(spec === "" ? bare : spec).matchAll(partWord)].map((match) => ({
    part: /contact|kontakt/.test(match[1]!)
      ? ("contact" as const)
      : /fl/.test(match[1]!)
        ? ("flight" as const)
        : ("height" as const),
    unit: unitOf(match[2]),
  }));
  const drop = /\b(?:drop(?: jump)?|from|dj) ?(?:from )?(\d{2,3})\b(?! x)/.exec(words);
  const stack = /\bon ?to ((?:\d+ ?[x×] ?)?\d+(?: ?\+ ?(?:\d+ ?[x×] ?)?\d+)*)/.exec(words);
  const landing = stack === null ? null : stack[1]!.replace(/\s/g, "");
  const isStack = landing !== null && /[x×+]/.test(landing);
  const test = name!
    .split(/\s[–—-]\s/)[0]!
    .replace(/\s*\(.*?\)\s*/g, " ")
    .replace(/\s+\d{2,3}\s*(?:cm)?\s+to\s+(?:the\s+)?floor/i, "")
    .trim();
  return {
    test: test === "" ? bare : test,
    parts,
    dropCm: drop === null ? null : Number(drop[1]),
    landingStack: isStack ? landing : null,
    unit: unitOf(/[([] ?(cm|mm|m|in|inches) ?[)\]]/.exec(words)?.[1]),
    landingCm: landing !== null && !isStack ? Number(landing) : null,
  };
}
