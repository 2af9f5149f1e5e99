import type { Dress } from "../../actions/messages";

const classes = {
  low: "word slipping",
  high: "word rising",
  unsure: "word few",
  plain: "",
} as const;

/** A status word in its dress; the word itself carries the meaning. */
export function Word({ word, dress }: { readonly word: string; readonly dress: Dress }) {
  return dress === "plain" ? <span>{word}</span> : <span class={classes[dress]}>{word}</span>;
}
