import { plainWords } from "../../header/header-words";
import { liftInWords } from "../lift-in-words";
import { figures, type HeadingParts } from "./heading-parts";
import { namesLift } from "./names-over-figures";

/**
 * A lift's name alone heads its loads where its other figures stand beside it: "Squat", "Squat reps", or
 * "Squat", "reps", "Bench", "reps". Numbers of sets under it are none.
 */
export function liftsAsLoads(
  written: readonly HeadingParts[],
  mayBeLoads: (column: number) => boolean,
): readonly HeadingParts[] {
  const isBare = ({ field, set, label, column }: HeadingParts) =>
    field === null && set === "" && namesLift(label) && mayBeLoads(column.index);
  const isLoad = (field: string | null) => field === "load" || field === "scheme";
  let lift = "";
  const own = written.map((one) => {
    // A lift is spelled as at first.
    const words = plainWords(one.label);
    const { label } = written.find((other) => plainWords(other.label) === words)!;
    if (isBare(one)) lift = label;
    return { ...one, label, lift };
  });
  const alone =
    own.some(({ field }) => field === "athlete") && !own.some(({ field }) => isLoad(field));
  const named = own.map(({ lift, ...one }) => {
    if (one.label !== "" || !figures.test(one.field ?? "")) return one;
    // The same figures once behind each of some lifts, or behind the only one, are theirs.
    const behind = own
      .filter(({ field, set, label }) => label === "" && field === one.field && set === one.set)
      .map((other) => other.lift);
    const each = new Set(behind);
    const clear = each.size === behind.length && !each.has("");
    const only = alone && own.every((other) => other.lift === "" || other.lift === lift);
    return clear && (each.size > 1 || only) ? { ...one, label: lift } : one;
  });
  const fieldsOf = ({ label }: HeadingParts) =>
    named.flatMap((one) => (one.label === label && one.field !== null ? [one.field] : []));
  const isHead = (one: HeadingParts) => isBare(one) && fieldsOf(one).length > 0;
  const any = named.some(isHead);
  return named.map((one) => {
    const { label } = one;
    const heads = isHead(one) || (any && isBare(one) && liftInWords(label) === plainWords(label));
    return heads && !fieldsOf(one).some(isLoad) ? { ...one, field: "load" } : one;
  });
}
