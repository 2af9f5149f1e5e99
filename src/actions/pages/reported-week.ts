import { type Day, mondayOf } from "../../coaching/calendar/day";
import { pageWords } from "../../words/pages";
import type { PrintableWeek } from "./printable-week";

/** Monday of the week that the head coach's page reports: the one before the planned week, or of the last rows where those end earlier. */
export const reportedMonday = ({ state, monday }: PrintableWeek): Day =>
  Math.min(monday - 7, mondayOf(state.asOf));

/** "Next week", or "The week of 6 Jul" where weeks lie between it and the one reported. */
export const plannedWeekName = (week: PrintableWeek): string =>
  week.monday === reportedMonday(week) + 7 ? pageWords.nextWeek : pageWords.theWeekOf(week.monday);
