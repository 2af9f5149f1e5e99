import type { TableName } from "../../rows/table-name";

/** A column of a clean tab: its heading, how its cells are shown, what is offered in them. */
export type PlannedColumn = {
  readonly heading: string;
  readonly format?: "0.0%" | "yyyy-mm-dd" | "hh:mm" | "0.00" | "0.0" | "0" | "@";
  /** A day stands to the left, as the words around it do. */
  readonly left?: true;
  readonly offer?: "athletes" | "exercises" | readonly string[];
};

const plain = (heading: string): PlannedColumn => ({ heading });
const shownAs =
  (format: NonNullable<PlannedColumn["format"]>) =>
  (heading: string): PlannedColumn => ({ heading, format });
const whole = shownAs("0");
const tenths = shownAs("0.0");
// As text: a list of speeds must not become a number or a date.
const text = shownAs("@");
const clock = shownAs("hh:mm");
const dayColumn = (heading: string): PlannedColumn => ({
  ...shownAs("yyyy-mm-dd")(heading),
  left: true,
});
const offering = (heading: string, offer: NonNullable<PlannedColumn["offer"]>): PlannedColumn => ({
  heading,
  offer,
});
const yesOrNo = (heading: string) => offering(heading, ["y", "n"]);
const day = dayColumn("Date");
const time = clock("Time");
const athlete = offering("Athlete", "athletes");
const note = plain("Note");

/** The headings of each table, as the readers know them; units stand in the heading. */
export const tabPlans: Readonly<Record<TableName, readonly PlannedColumn[]>> = {
  Athletes: [
    plain("Athlete"),
    plain("Group"),
    plain("Event"),
    offering("Experience", ["novice", "trained"]),
    whole("Birth year"),
    plain("Supervisor"),
    dayColumn("Baseline from"),
    dayColumn("Baseline to"),
    whole("Sessions a week"),
    shownAs("0.0%")("Step up"),
    plain("Notes"),
  ],
  Availability: [
    athlete,
    dayColumn("From"),
    dayColumn("Until"),
    offering("May do", ["full", "modified", "out", "cleared"]),
    plain("By whom"),
    plain("Site"),
    whole("Pain 0-10"),
    note,
  ],
  Sets: [
    day,
    time,
    athlete,
    offering("Exercise", "exercises"),
    whole("Set"),
    offering("Kind", ["warm-up", "marker", "work"]),
    whole("Reps"),
    tenths("Load (kg)"),
    text("Rep speeds (m/s)"),
    offering("Speed is", ["mean", "peak"]),
    plain("Tool"),
    tenths("Bar mass (kg)"),
    plain("Gym"),
    yesOrNo("Movement ok?"),
    whole("Reps in reserve"),
    plain("By"),
    note,
  ],
  Jumps: [
    day,
    athlete,
    offering("Test", ["box jump", "drop jump"]),
    tenths("Height (cm)"),
    text("Stack"),
    yesOrNo("Cleared?"),
    tenths("Drop height (cm)"),
    tenths("Landing height (cm)"),
    whole("Contact time (ms)"),
    whole("Flight time (ms)"),
    note,
  ],
  Diary: [
    day,
    athlete,
    tenths("Sleep (h)"),
    whole("Sleep quality"),
    whole("Soreness"),
    whole("Fatigue"),
    whole("Stress"),
    whole("Mood"),
    yesOrNo("Carbs in session?"),
    plain("Food note"),
    plain("New today"),
    note,
    yesOrNo("Private?"),
  ],
  Runs: [
    day,
    time,
    athlete,
    offering("Kind", ["easy", "long", "tempo", "interval", "race"]),
    whole("Minutes"),
    whole("Exertion"),
    tenths("km"),
  ],
  Races: [
    day,
    clock("Start time"),
    plain("Race"),
    plain("Athlete or group"),
    plain("Distance"),
    plain("Surface"),
    offering("Matters", ["A", "B", "C"]),
  ],
  Plates: [tenths("Mass (kg)"), tenths("Thickness (cm)"), whole("Number owned")],
  Rules: [plain("Rule"), plain("Value")],
};

/** Lifts offered before any were written; any other may be typed. */
export const usualExercises = ["back squat", "front squat", "deadlift", "split squat"] as const;
