import type { Ask, State } from "../state";

/** The week on screen with its changes: another one may have been chosen and not been read yet. */
export function shownWeek({
  week,
  monday,
  changes,
  otherWeeks,
}: State): Pick<State, "monday" | "changes"> {
  if (week === null || monday === null) return { monday: week?.monday ?? monday, changes };
  return week.monday === monday
    ? { monday, changes }
    : { monday: week.monday, changes: otherWeeks[week.monday] ?? [] };
}

/** A week taken back is proposed afresh, by the script and here: changes are kept until then. */
export function proposedAfresh(state: State, monday: string): State {
  const { [monday]: gone, ...otherWeeks } = state.otherWeeks;
  return state.monday === monday ? { ...state, changes: [], otherWeeks } : { ...state, otherWeeks };
}

/** Back to the week on screen, when the one that was chosen could not be read. */
export function onShownWeek(state: State): State {
  const { monday, changes, otherWeeks } = state;
  const aside = monday === null ? otherWeeks : { ...otherWeeks, [monday]: changes };
  return { ...state, otherWeeks: aside, ...shownWeek(state) };
}

/** Whether an answer about a week is of the week and the changes as they are now: a later one may be on its way. */
export function isPresentWeek({ monday, changes }: State, message: Ask["message"]): boolean {
  const sameWeek = message.monday === null || message.monday === monday;
  return sameWeek && JSON.stringify(message.changes) === JSON.stringify(changes);
}
