import type { Member } from "./club";
import { dayOf, seasonStart } from "./season-days";

/** How far a runner stands from the season's start on a day, as fractions of best squat and jump. */
export type Form = { readonly squat: number; readonly jump: number };

const level: Form = { squat: 0, jump: 0 };
const weeksSince = (day: number, from: number) => (day - from) / 7;

/** What happened to whom: the twelve stories of the season, as changes of best squat and box jump. */
export function formOn({ athlete }: Member, day: number): Form {
  switch (athlete) {
    case "Tomas Reyerson": {
      // Night shifts from 12 May: 1.3 % a week, the first of it on that day, to 9 %.
      const weeks = weeksSince(day, dayOf("2026-05-05"));
      const loss = weeks <= 0 ? 0 : -Math.min(0.09, 0.013 * weeks);
      return { squat: loss, jump: 0.3 * loss };
    }
    case "Wren Castellow": {
      const weeks = Math.min(12, weeksSince(day, seasonStart));
      return { squat: 0.015 * weeks, jump: 0.005 * weeks };
    }
    case "Bea Lindqvale": {
      const weeks = weeksSince(day, seasonStart);
      return { squat: 0.01 * weeks, jump: 0.005 * weeks };
    }
    case "Ilka Brandmoor":
      return day === dayOf("2026-06-16") ? { squat: 0.09, jump: 0.04 } : level;
    case "Dario Quell": {
      // Back on 2 June at 6 % less, level on 30 June.
      if (day < dayOf("2026-05-18")) return level;
      const left = Math.max(0, weeksSince(dayOf("2026-06-30"), day)) / 4;
      return { squat: -0.06 * left, jump: 0 };
    }
    case "Priya Tellander":
      return slowDaysOfPriya.has(day) ? { squat: -0.07, jump: -0.03 } : level;
    case "Hamid Sorley": {
      // A marathon on 26 April; 7 May at 6 % less, level on 19 May.
      if (day <= dayOf("2026-04-26") || day >= dayOf("2026-05-19")) return level;
      return { squat: -0.06 * ((dayOf("2026-05-19") - day) / 12), jump: 0 };
    }
    default:
      return level;
  }
}

/** Priya's eight slow days; before all but the last the night was under six hours. */
export const slowDaysOfPriya: ReadonlySet<number> = new Set(
  [
    "2026-04-16",
    "2026-04-30",
    "2026-05-09",
    "2026-05-19",
    "2026-05-28",
    "2026-06-06",
    "2026-06-11",
    "2026-06-23",
  ].map(dayOf),
);
export const priyaSleptWell = dayOf("2026-06-23");
/** Three short nights before days as usual. */
export const shortNightsOfPriya: ReadonlySet<number> = new Set(
  ["2026-04-21", "2026-05-14", "2026-06-18"].map(dayOf),
);

/** Days of drop-jump contact that Joss's Achilles tendon tells, ms. */
export const contactOfJoss: ReadonlyMap<number, number> = new Map(
  (
    [
      ["2026-05-28", 198],
      ["2026-06-02", 208],
      ["2026-06-04", 214],
      ["2026-06-09", 221],
      ["2026-06-11", 226],
      ["2026-06-23", 243],
    ] as const
  ).map(([day, ms]) => [dayOf(day), ms]),
);
