import type { TableName } from "../../rows/table-name";

/** A column of a clean tab: its heading, how its cells are shown, what is offered in them. */
export type PlannedColumn = {
  readonly heading: string;
  readonly format?: "0.0%" | "yyyy-mm-dd" | "hh:mm" | "0.00" | "0.0" | "0" | "@";
  /** A day stands to the left, as the words around it do. */
  readonly left?: true;
  readonly offer?: "athletes" | "exercises" | readonly string[];
};

const dayColumn = (heading: string): PlannedColumn => ({
  heading,
  format: "yyyy-mm-dd",
  left: true,
});
const day = dayColumn("Date");
const time = { heading: "Time", format: "hh:mm" } as const;
const athlete = { heading: "Athlete", offer: "athletes" } as const;
const yesNo = ["y", "n"] as const;

/** The headings of each table, as the readers know them; units stand in the heading. */
export const tabPlans: Readonly<Record<TableName, readonly PlannedColumn[]>> = {
  Athletes: [
    { heading: "Athlete" },
    { heading: "Group" },
    { heading: "Event" },
    { heading: "Experience", offer: ["novice", "trained"] },
    { heading: "Birth year", format: "0" },
    { heading: "Supervisor" },
    dayColumn("Baseline from"),
    dayColumn("Baseline to"),
    { heading: "Sessions a week", format: "0" },
    { heading: "Step up", format: "0.0%" },
    { heading: "Notes" },
  ],
  Availability: [
    athlete,
    dayColumn("From"),
    dayColumn("Until"),
    { heading: "May do", offer: ["full", "modified", "out", "cleared"] },
    { heading: "By whom" },
    { heading: "Site" },
    { heading: "Pain 0-10", format: "0" },
    { heading: "Note" },
  ],
  Sets: [
    day,
    time,
    athlete,
    { heading: "Exercise", offer: "exercises" },
    { heading: "Set", format: "0" },
    { heading: "Kind", offer: ["warm-up", "marker", "work"] },
    { heading: "Reps", format: "0" },
    { heading: "Load (kg)", format: "0.0" },
    // As text: a list of speeds must not become a number or a date.
    { heading: "Rep speeds (m/s)", format: "@" },
    { heading: "Speed is", offer: ["mean", "peak"] },
    { heading: "Tool" },
    { heading: "Bar mass (kg)", format: "0.0" },
    { heading: "Gym" },
    { heading: "Movement ok?", offer: yesNo },
    { heading: "Reps in reserve", format: "0" },
    { heading: "By" },
    { heading: "Note" },
  ],
  Jumps: [
    day,
    athlete,
    { heading: "Test", offer: ["box jump", "drop jump"] },
    { heading: "Height (cm)", format: "0.0" },
    { heading: "Stack", format: "@" },
    { heading: "Cleared?", offer: yesNo },
    { heading: "Drop height (cm)", format: "0.0" },
    { heading: "Landing height (cm)", format: "0.0" },
    { heading: "Contact time (ms)", format: "0" },
    { heading: "Flight time (ms)", format: "0" },
    { heading: "Note" },
  ],
  Diary: [
    day,
    athlete,
    { heading: "Sleep (h)", format: "0.0" },
    { heading: "Sleep quality", format: "0" },
    { heading: "Soreness", format: "0" },
    { heading: "Fatigue", format: "0" },
    { heading: "Stress", format: "0" },
    { heading: "Mood", format: "0" },
    { heading: "Carbs in session?", offer: yesNo },
    { heading: "Food note" },
    { heading: "New today" },
    { heading: "Note" },
    { heading: "Private?", offer: yesNo },
  ],
  Runs: [
    day,
    time,
    athlete,
    { heading: "Kind", offer: ["easy", "long", "tempo", "interval", "race"] },
    { heading: "Minutes", format: "0" },
    { heading: "Exertion", format: "0" },
    { heading: "km", format: "0.0" },
  ],
  Races: [
    day,
    { heading: "Start time", format: "hh:mm" },
    { heading: "Race" },
    { heading: "Athlete or group" },
    { heading: "Distance" },
    { heading: "Surface" },
    { heading: "Matters", offer: ["A", "B", "C"] },
  ],
  Plates: [
    { heading: "Mass (kg)", format: "0.0" },
    { heading: "Thickness (cm)", format: "0.0" },
    { heading: "Number owned", format: "0" },
  ],
  Rules: [{ heading: "Rule" }, { heading: "Value" }],
};

/** Lifts offered before any were written; any other may be typed. */
export const usualExercises = ["back squat", "front squat", "deadlift", "split squat"] as const;
