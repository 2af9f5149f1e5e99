import { type Day, dateOfDay, weekdayOfDay } from "../coaching/calendar/day";

/** Weekdays from Monday, and months: written out here and nowhere else. */
export const weekdays = [
  "Monday",
  "Tuesday",
  "Wednesday",
  "Thursday",
  "Friday",
  "Saturday",
  "Sunday",
] as const;
const months = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;
const short = (name: string | undefined) => name?.slice(0, 3) ?? "";

/** "June"; months from 1. */
export const monthName = (month: number): string => months[month - 1] ?? "";

/** "May", "Jun"; months from 1. */
export const shortMonth = (month: number): string => short(months[month - 1]);

/** "12 May", "30 Jun" */
export function dayWords(day: Day): string {
  const { month, date } = dateOfDay(day);
  return `${date} ${shortMonth(month)}`;
}

/** "13 Jul", and "13 Jul 2025" seen from another year. */
export function dayFrom(today: Day, day: Day): string {
  const { year } = dateOfDay(day);
  return year === dateOfDay(today).year ? dayWords(day) : `${dayWords(day)} ${year}`;
}

/** "Tue 30 Jun" */
export function weekdayWords(day: Day): string {
  return `${short(weekdays[weekdayOfDay(day)])} ${dayWords(day)}`;
}

/** "30 June" */
export function longDay(day: Day): string {
  const { month, date } = dateOfDay(day);
  return `${date} ${months[month - 1]}`;
}

/** "Tue 30 June 2026" */
export function datedDay(day: Day): string {
  return `${short(weekdays[weekdayOfDay(day)])} ${longDay(day)} ${dateOfDay(day).year}`;
}
