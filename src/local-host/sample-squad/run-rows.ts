import { chance } from "./chance";
import { type Member, members } from "./club";
import { raceDays } from "./race-rows";
import { dayOf, isoOf, seasonStart, today } from "./season-days";
import { type Dated, inOrderOfDay, type SampleTable } from "./table";

const headings = "Date,Time,Athlete,Kind,Minutes,Exertion,km";
/** Runs are planned two weeks beyond today. */
const planned = today + 14;

/** By weekday from Monday: kind, start, minutes, exertion, minutes for a kilometre. */
const week = [
  null,
  { kind: "interval", time: "07:00", minutes: 55, exertion: 8, pace: 5 },
  { kind: "easy", time: "18:30", minutes: 45, exertion: 3, pace: 5.4 },
  { kind: "tempo", time: "07:00", minutes: 50, exertion: 7, pace: 4.7 },
  { kind: "easy", time: "18:30", minutes: 40, exertion: 3, pace: 5.4 },
  null,
  { kind: "long", time: "09:00", minutes: 80, exertion: 5, pace: 5.2 },
] as const;

/** Runs done up to today, and planned ones without exertion beyond. */
export function runTable(): SampleTable {
  const rows: Dated[] = [];
  for (const member of members) {
    const random = chance(member.seed * 1000 + 700);
    const races = raceDays(member);
    for (let day = seasonStart; day <= planned; day++) {
      const run = week[(day - seasonStart) % 7];
      const wobble = 1 + 0.05 * random.normal();
      const felt = random.normal();
      if (!run || races.has(day) || races.has(day + 1) || away(member, day)) continue;
      const minutes = Math.round(run.minutes * share(member) * (day > today ? 1 : wobble));
      const km = Math.round((10 * minutes) / run.pace) / 10;
      const exertion =
        day > today ? null : Math.min(10, Math.max(1, Math.round(run.exertion + 0.6 * felt)));
      rows.push({
        day,
        row: [isoOf(day), run.time, member.athlete, run.kind, minutes, exertion, km],
      });
    }
  }
  return { name: "Runs", rows: [headings.split(","), ...inOrderOfDay(rows)] };
}

/** Middle distances run less, the marathon more. */
function share({ event, experience }: Member): number {
  if (experience === "novice") return 0.7;
  if (event === "800 m" || event === "1500 m") return 0.85;
  return event === "marathon" || event === "half marathon" ? 1.15 : 1;
}

function away({ athlete, group }: Member, day: number): boolean {
  if (athlete === "Dario Quell" && day >= dayOf("2026-05-18") && day < dayOf("2026-06-04"))
    return true;
  if (athlete === "Maren Aspholt" && day < dayOf("2026-05-25")) return true;
  // Two weeks of walking after the marathon.
  return group === "marathon" && day > dayOf("2026-04-26") && day < dayOf("2026-05-11");
}
