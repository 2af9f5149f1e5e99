import type { Member } from "./club";
import { dayOf, seasonStart, today } from "./season-days";

export type GymDay = {
  readonly day: number;
  /** No work sets: a race is near, or the day is for the marker and jumps only. */
  readonly markerOnly: boolean;
};

const missed: Readonly<Record<string, readonly string[]>> = {
  "Kofi Anstruther": ["2026-04-30"],
  "Nils Quarrington": ["2026-05-14"],
  "Wren Castellow": ["2026-06-11"],
  "Bea Lindqvale": ["2026-04-23"],
  "Joss Whitterby": ["2026-05-07"],
  "Hamid Sorley": ["2026-04-28", "2026-05-05"],
};

const saturdaysOfPriya = [
  "2026-04-11",
  "2026-04-18",
  "2026-05-02",
  "2026-05-09",
  "2026-05-16",
  "2026-05-30",
  "2026-06-06",
  "2026-06-20",
].map(dayOf);

/** Days a runner was in the gym: Tuesdays and Thursdays, less what each one's season took away. */
export function gymDays({ athlete, group, sessionsAWeek }: Member): readonly GymDay[] {
  const away = new Set((missed[athlete] ?? []).map(dayOf));
  const days: GymDay[] = [];
  for (let day = seasonStart; day <= today; day++) {
    const weekday = (day - seasonStart) % 7;
    const priya = athlete === "Priya Tellander";
    if (priya && saturdaysOfPriya.includes(day)) days.push({ day, markerOnly: true });
    if ((weekday !== 1 && weekday !== 3) || away.has(day)) continue;
    if (weekday === 3 && sessionsAWeek === 1 && !hamidsThursday(athlete, day)) continue;
    if (athlete === "Tomas Reyerson" && weekday === 3 && day > dayOf("2026-05-12")) continue;
    if (athlete === "Maren Aspholt" && day < dayOf("2026-05-26")) continue;
    if (athlete === "Dario Quell" && day >= dayOf("2026-05-18") && day <= dayOf("2026-06-01"))
      continue;
    // Forty hours before the A race of 23 May: those who run it do not lift.
    const raceNear = group === "road" && day === dayOf("2026-05-21");
    if (raceNear && !priya) continue;
    days.push({ day, markerOnly: raceNear });
  }
  return days;
}

/** The first day back after the marathon was a Thursday. */
function hamidsThursday(athlete: string, day: number): boolean {
  return athlete === "Hamid Sorley" && day === dayOf("2026-05-07");
}
