import { fittingTabName } from "../../../src/local-host/files/tab-names";
import { hostileText, keys } from "./hostile-text";

const days = ["2026-06-02", "2026-06-04", "2026-06-09", "2026-06-11", "2026-06-16", "2026-06-18"];

/** When those who have slipped since were faster: their charts are printed. */
const fastDays = ["04-14", "04-16", "04-21", "04-23", "04-28", "04-30", "05-05", "05-07"].map(
  (day) => `2026-${day}`,
);

/** A workbook in which every text a coach could give is hostile: names, cells, headings, tab names. */
export function hostileClub(texts: readonly string[] = hostileText): Record<string, unknown[][]> {
  const names = texts.map((text) => text.slice(0, 200));
  return {
    Athletes: [
      ["Athlete", "Group", "Experience", "Notes"],
      ...names.map((name) => [name, name, "trained", name]),
    ],
    Sets: [
      [
        "Date",
        "Athlete",
        "Exercise",
        "Kind",
        "Reps",
        "Load (kg)",
        "Rep speeds (m/s)",
        "Gym",
        "Note",
        ...names.slice(0, 6),
      ],
      ...names.slice(0, 4).flatMap((name) =>
        fastDays.flatMap((day) => [
          [day, name, "back squat", "marker", 3, 50, "0.99 0.98 0.97", name, name],
          [day, name, "back squat", "work", 5, 70, "0.75 0.73 0.70", name, name],
        ]),
      ),
      ...names.flatMap((name) =>
        days.flatMap((day) => [
          [day, name, "back squat", "marker", 3, 50, "0.85 0.84 0.83", name, name],
          [day, name, "back squat", "work", 5, 70, "0.62 0.60 0.58", name, name],
        ]),
      ),
    ],
    Diary: [
      ["Date", "Athlete", "Sleep (h)", "Soreness", "Mood", "Food note", "New today", "Note"],
      ...names.flatMap((name) => days.map((day) => [day, name, 5, 3, 5, name, name, name])),
    ],
    Races: [
      ["Date", "Start", "Race", "Who", "Distance", "Matters"],
      ...names.slice(0, 12).map((name) => ["2026-06-27", "10:00", name, "all", "10 km", "A"]),
    ],
    Rules: [["Rule", "Value"], ...keys.map((key) => [key, 1])],
    // As much of it as a tab's name can be.
    ...Object.fromEntries(
      names.slice(0, 8).map((name, at) => [
        fittingTabName(`${at} ${name}`, new Set()),
        [
          [name, name],
          [name, 1],
        ],
      ]),
    ),
  };
}
