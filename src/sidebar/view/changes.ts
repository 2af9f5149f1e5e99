import type { WeekChange } from "../../actions/messages";

/** What was changed of an athlete's week, or of the load of one of its other turns. */
export const changeOf = (
  changes: readonly WeekChange[],
  name: string,
  turn = "",
): Partial<WeekChange> =>
  changes.find((one) => one.athlete === name && (one.turn ?? "") === turn) ?? {};

/** What was chosen since the script answered: it stands in its field until the answer does. */
export function notYetShown(
  now: Partial<WeekChange>,
  shown: Partial<WeekChange>,
): Omit<Partial<WeekChange>, "athlete" | "turn"> {
  const fresh = Object.entries(now).filter(
    ([field, value]) =>
      field !== "athlete" && field !== "turn" && shown[field as keyof WeekChange] !== value,
  );
  return Object.fromEntries(fresh);
}
