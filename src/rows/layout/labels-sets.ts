import { plainWords } from "../header/header-words";
import { setKinds } from "../table/set-kinds";
import { liftInWords } from "./lift-in-words";
import { leastLoad } from "./shorthand/scheme";

/** Whether a cell under a lift's name labels a set, by number or kind, or names the next block's lift: no load. */
export function labelsSet(cell: unknown): boolean {
  if (Number(cell) < leastLoad) return true;
  const words = plainWords(cell);
  return setKinds.has(words) || (liftInWords(words) !== null && !/\d/.test(words));
}
