/**
 * What passes between sidebar and script: plain JSON only, days as "2026-05-12". Sentences are made
 * on the script's side, so that sidebar, cell and paper say the same.
 */
export type * from "./messages/diary";
export type * from "./messages/pictures";
export type * from "./messages/rows";
export type * from "./messages/set-up";
export type * from "./messages/squad";
export type * from "./messages/week";
export type * from "./messages/week-change";

/** How a word is dressed wherever it is shown; the word itself always stands there too. */
export type Dress = "low" | "high" | "unsure" | "plain";

/** What is kept with the workbook. */
export const keptMatters = ["answers", "next week", "week changes", "season"] as const;
export type KeptMatter = (typeof keptMatters)[number];

/** Something kept that can no longer be read: what that means and what to do. */
export type DamagedMemory = { readonly what: KeptMatter; readonly said: string };

/** What a whole view was read without, damaged as it is. */
export type ReadWithout = { readonly damaged: readonly DamagedMemory[] };

/** An answer after something was done: what happened, in one sentence. */
export type Done = { readonly said: string };
