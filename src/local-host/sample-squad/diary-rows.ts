import { chance, rounded } from "./chance";
import { type Member, members } from "./club";
import { gymDays } from "./gym-days";
import { dayOf, isoOf } from "./season-days";
import { priyaSleptWell, shortNightsOfPriya, slowDaysOfPriya } from "./stories";
import { type Dated, inOrderOfDay, type SampleCell, type SampleTable } from "./table";

const headings =
  "Date,Athlete,Sleep (h),Sleep quality,Soreness,Fatigue,Stress,Mood,Carbs in session?,Food note,New today,Note,Private?";

/** What somebody wrote beside a day: food, new today, note, private. */
const written: Readonly<Record<string, readonly SampleCell[]>> = {
  "Tomas Reyerson 2026-05-12": [null, null, "first week of night shifts", "y"],
  "Wren Castellow 2026-05-14": [null, "new shoes", null, null],
  "Kofi Anstruther 2026-05-28": ["missed lunch", null, null, null],
  "Ilka Brandmoor 2026-06-16": [null, null, "slept in, felt light", null],
  "Priya Tellander 2026-05-25": [null, null, "calves after the race", null],
  "Joss Whitterby 2026-06-09": [null, null, "Achilles stiff in the morning", "y"],
  "Nils Quarrington 2026-06-02": [null, "bar tool B", null, null],
  "Hamid Sorley 2026-05-07": [null, null, "legs still heavy", null],
};

/** Diary rows of gym days, and Priya's Monday after the race of 23 May. */
export function diaryTable(): SampleTable {
  const rows: Dated[] = [];
  for (const member of members) {
    const random = chance(member.seed * 1000 + 900);
    const days = gymDays(member).map(({ day }) => day);
    if (member.athlete === "Priya Tellander") days.push(dayOf("2026-05-25"));
    for (const day of days.sort((a, b) => a - b)) {
      const item = (usual: number, spread: number) =>
        Math.min(10, Math.max(0, Math.round(usual + spread * random.normal())));
      const sleep = sleepH(member, day, random.normal());
      const sore = soreness(member, day);
      const row = [
        isoOf(day),
        member.athlete,
        member.athlete === "Nils Quarrington" && day === dayOf("2026-05-26") ? 75 : sleep,
        Math.min(5, Math.max(1, Math.round(sleep - 4 + 0.7 * random.normal()))),
        sore === null ? item(2.5, 1) : sore,
        item(3, 1),
        item(2.5, 1),
        item(7, 1),
        random.uniform() < 0.6 ? "y" : "n",
        ...(written[`${member.athlete} ${isoOf(day)}`] ?? [null, null, null, null]),
      ];
      rows.push({ day, row });
    }
  }
  return { name: "Diary", rows: [headings.split(","), ...inOrderOfDay(rows)] };
}

/** Hours slept the night before, to a quarter of an hour. */
function sleepH({ athlete }: Member, day: number, noise: number): number {
  const short =
    athlete === "Priya Tellander" &&
    ((slowDaysOfPriya.has(day) && day !== priyaSleptWell) || shortNightsOfPriya.has(day));
  if (short) return Math.min(5.75, rounded(Math.round(4 * (5.25 + 0.3 * noise)) / 4, 2));
  const nightShift = athlete === "Tomas Reyerson" && day >= dayOf("2026-05-12");
  const usual = nightShift ? 6.2 : 7.6;
  return Math.max(6, rounded(Math.round(4 * (usual + 0.6 * noise)) / 4, 2));
}

/** Days on which the legs told a story of their own. */
function soreness({ athlete }: Member, day: number): number | null {
  if (athlete === "Priya Tellander" && day === dayOf("2026-05-25")) return 7;
  if (athlete === "Hamid Sorley" && day === dayOf("2026-05-07")) return 5;
  return null;
}
