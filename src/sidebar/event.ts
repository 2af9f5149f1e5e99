import type { KeptMatter, WeekChange } from "../actions/messages";
import type { PageKind } from "../actions/page-messages";
import type { Ask, ViewName } from "./state";

/** What can happen: a click, or an answer of the script. */
export type Event =
  | { readonly type: "started" }
  /** Another day has begun while the sidebar stood open. */
  | { readonly type: "day came"; readonly today: string }
  | { readonly type: "chose view"; readonly view: ViewName }
  | { readonly type: "opened athlete"; readonly athlete: string }
  | { readonly type: "closed athlete" }
  | { readonly type: "asked again" }
  /** The workbook's own Undo or Redo has changed cells. */
  | { readonly type: "undone" }
  | { readonly type: "asked"; readonly ask: Ask; readonly busy: string }
  | { readonly type: "chose week"; readonly monday: string }
  | { readonly type: "changed"; readonly change: WeekChange }
  | {
      readonly type: "wrote";
      readonly athletes: readonly string[] | null;
      /** Rows deleted in the tab are written, too. */
      readonly again?: true;
    }
  | { readonly type: "took back" }
  /** An answer is to be taken back. */
  | { readonly type: "took answer back" }
  /** Something kept that can no longer be read is to be forgotten. */
  | { readonly type: "forgot damaged"; readonly what: KeptMatter }
  | { readonly type: "printed"; readonly kind: PageKind }
  | { readonly type: "printed again" }
  /** The host did not open its print window. */
  | { readonly type: "kept from printing" }
  /** The pages are wanted in a window of their own, and whether the browser gave one. */
  | { readonly type: "asked for window" }
  | { readonly type: "opened window"; readonly given: boolean }
  | { readonly type: "answered"; readonly ask: Ask; readonly answer: unknown }
  | { readonly type: "failed"; readonly ask: Ask; readonly message: string };
