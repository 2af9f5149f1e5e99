import type { Member } from "./club";
import { dayOf } from "./season-days";
import type { SampleTable } from "./table";

const headings = "Date,Start time,Race,Athlete or group,Distance,Surface,Matters";

/** The season's races; a group's name stands for everybody in it. */
const races = [
  ["2026-04-26", "09:30", "R1 Tannery road race", "road", "10 km", "road", "B"],
  ["2026-04-26", "09:00", "R1 Marshgate marathon", "marathon", "marathon", "road", "A"],
  ["2026-05-23", "10:00", "R2 Quillbeck ten", "road", "10 km", "road", "A"],
  ["2026-06-13", "14:00", "R3 Ferry Field meeting", "track", null, "track", "B"],
  ["2026-07-04", "11:00", "R4 county track weekend, day 1", "track", null, "track", "A"],
  ["2026-07-05", "11:00", "R4 county track weekend, day 2", "track", null, "track", "A"],
  ["2026-08-02", "10:00", "R5 Harbour half", "road", "half marathon", "road", "A"],
  ["2026-08-02", "10:00", "R5 Harbour half", "marathon", "half marathon", "road", "A"],
  ["2026-08-02", "12:00", "R5 Harbour five", "track", "5 km", "road", "A"],
] as const;

export function raceTable(): SampleTable {
  return { name: "Races", rows: [headings.split(","), ...races] };
}

/** Days on which a runner races. */
export function raceDays({ group }: Member): ReadonlySet<number> {
  return new Set(races.filter(([, , , who]) => who === group).map(([date]) => dayOf(date)));
}
