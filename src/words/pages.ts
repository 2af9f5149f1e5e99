import { type Day, dateOfDay, weekdayOfDay } from "../coaching/calendar/day";
import type { DayBand } from "../coaching/next-week/day-bands";
import type { PrintedNumbers } from "./printed-numbers";
import { weekdayWords } from "./week";

const weekdays = [
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
const numbers = [
  "no",
  "one",
  "two",
  "three",
  "four",
  "five",
  "six",
  "seven",
  "eight",
  "nine",
  "ten",
  "eleven",
  "twelve",
] as const;

export const spelled = (count: number): string => numbers[count] ?? String(count);
export const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** "30 June" */
export function longDay(day: Day): string {
  const { month, date } = dateOfDay(day);
  return `${date} ${months[month - 1]}`;
}

/** "Tue 30 June 2026" */
export function datedDay(day: Day): string {
  return `${weekdays[weekdayOfDay(day)]?.slice(0, 3)} ${longDay(day)} ${dateOfDay(day).year}`;
}

/** "18:00" */
export const clock = (minute: number): string =>
  `${String(Math.floor(minute / 60)).padStart(2, "0")}:${String(minute % 60).padStart(2, "0")}`;

/** The speeds of a band, the figure apart from the words after it. */
export function bandParts(
  { from, to }: DayBand,
  { speed }: PrintedNumbers,
): { readonly speed: string; readonly speedAfter: string } {
  if (to === null) {
    return from === null
      ? { speed: "any speed", speedAfter: "" }
      : { speed: speed(from), speedAfter: "or faster" };
  }
  return from === null
    ? { speed: speed(to), speedAfter: "or slower" }
    : { speed: from === to ? speed(to) : `${speed(from)} to ${speed(to)}`, speedAfter: "" };
}

/** "off 5, on 10 + 2.5"; "same bar" when nothing moves. */
export function changeWords(
  change: { readonly takeOff: readonly number[]; readonly putOn: readonly number[] },
  { mass }: PrintedNumbers,
): string {
  const list = (plates: readonly number[]) => plates.map(mass).join(" + ");
  const parts = [
    change.takeOff.length > 0 ? `off ${list(change.takeOff)}` : "",
    change.putOn.length > 0 ? `on ${list(change.putOn)}` : "",
  ].filter((part) => part !== "");
  return parts.length === 0 ? "same bar" : parts.join(", ");
}

/** "A, B and C" */
export function listWords(items: readonly string[]): string {
  return items.length < 2
    ? (items[0] ?? "")
    : `${items.slice(0, -1).join(", ")} and ${items[items.length - 1]}`;
}

export { weekdayWords };

/** Labels of the printed pages. */
export const pageWords = {
  printCards: "Print cards",
  printRacks: "Print rack plan",
  printWeek: "Print page for the head coach",
  printPictures: "Print charts of those who moved",
  openWindow: "Open the pages in a window",
  keptBack: "The print window did not open from here. Open the pages in a window of their own",
  printThese: "Print these pages",
  windowKept: "The browser held the window back: allow pop-ups for this page, then press again",
  nobodyMoved: "Nobody is slipping or rising: there is no chart to print",
  onPaper: "On paper",
  again: "Open the print window again",
  asShown: "As the week stands here, your changes among it.",
  preparing: "Preparing the pages",
  nothingToPrint: "Nobody lifts in that week: there is no page to print",
  pages: (count: number) => `${count} ${count === 1 ? "page" : "pages"} ready to print`,
  // Card.
  warmUp: "10 to 15 min, bike or rower: sweating, slightly out of breath.",
  warmUpName: "Warm up",
  markerSet: (load: string, reps: number) => `Marker set: ${load} × ${reps}`,
  fullIntent: "full intent",
  usual: (speed: string) => `Usual ${speed}.`,
  mean: "mean",
  decides: "Your mean decides today’s lift",
  meanHead: "Mean, m/s",
  liftHead: (unit: string) => `Lift, ${unit}`,
  platesHead: (unit: string) => `Plates a side, ${unit}`,
  floorHead: "Speed floor",
  orIll: "or slower, or ill",
  noHeavy: "no heavy work today, tell coach",
  faster:
    "Faster than usual adds nothing to the bar. In doubt, repeat the marker set once. Movement first, then volume, then load.",
  noBands:
    "No usual speed is known yet. First work set slower than usual by eye: repeat it once, and if it stays slow take about 10 % off. Ill, or far slower: no heavy work, tell your coach.",
  noMarker: "No marker set: the main lift has another in its place.",
  otherwise: (block: string, load: string) =>
    `Only if the session before moved well, was done in full and held its speed; otherwise ${block} at ${load} again.`,
  stopByForm: "End a set when the movement goes.",
  jumps: "Jumps",
  contacts: (count: number) => `${count} contacts in all.`,
  noJumps: "No jumps until asked about.",
  noJumpsToday: "No jumps in this session.",
  contact: "contact",
  jumpCare:
    "Contact past 0.25 s: lower the drop. Two misses end the box jump. Achilles or calf pain: no jumps.",
  noviceCare: "Soft box. Two misses end the box jump. Achilles or calf pain: no jumps.",
  setsOf: (sets: number, reps: number) => `${sets} ${sets === 1 ? "set" : "sets"} of ${reps}`,
  stopRule:
    "End a set at two repetitions running under the speed floor, or when the movement goes.",
  halfSets: "Sets about half this week, load kept.",
  poorMovement: "Movement was poor last time: watch it first.",
  set: "Set",
  reps: "Reps",
  loadHead: (unit: string) => `Load, ${unit}`,
  speedsHead: "Speeds, m/s",
  movementHead: "Movement ok?",
  reserveHead: "Reps in reserve",
  byHead: "By",
  yesNo: "y / n",
  tick: "Done",
  planned: (load: string, plates: string) =>
    `planned ${load}${plates === "" ? "" : ` (${plates})`}`,
  assistance: "Assistance, in turn.",
  byFeel: "Loads by feel, 2–3 in reserve.",
  instead: (usual: string) => `in place of ${usual}`,
  note: "Note",
  aSide: (plates: string) => `${plates} a side`,
  emptyBar: "empty bar",
  // Rack plan.
  rackPlan: "Rack plan",
  rack: (n: number) => `Rack ${n}`,
  bar: (load: string) => `${load} bar`,
  rackLead: (lifters: number, racks: number, minutes: string) =>
    `${sentence(spelled(lifters))} ${lifters === 1 ? "lifts" : "lift"} at ${spelled(racks)} ${racks === 1 ? "rack" : "racks"}, lightest first at each, about ${minutes} min. Marker sets, then jumps, then the main lift in turn: one set each, then back to the top. The card decides the load; “if slower” gives its next ones.`,
  back: (athlete: string, change: string) => `Next round, back to ${athlete}: ${change}`,
  heads: {
    athlete: "Athlete",
    marker: "Marker",
    change: "Change a side",
    lift: "Lift",
    sets: "Sets",
    slower: "If slower",
    stack: "Stack",
    cm: "cm",
    athletes: "Athletes",
    plate: "Plate",
    onBars: "On bars",
    inStack: "Stack",
    drop: "Drop jump",
    owned: "Owned",
    spare: "Spare",
  },
  stackTable: "Box-jump stack, lowest first",
  platesTable: "Plates needed at once",
  noJumpsFor: (athletes: string) => `No jumps: ${athletes}.`,
  allBuilt: "Every load and stack can be built at the same time.",
  notBuilt: (plates: string) =>
    `Not enough of ${plates} for every load and the stacks at once: lift and jump in turn.`,
  // Page a week.
  weekOf: (day: string) => `Week of ${day}, for the head coach`,
  written: (day: string) => `written ${day}`,
  weekHeads: [
    "Athlete",
    "Season, percent of baseline",
    "In words",
    "Sessions this week",
    "May do",
    "Next week, sets × reps",
  ],
  weeksAhead: "Weeks ahead",
  pictures: "Charts of those who moved",
  pageOf: (at: number, count: number) => `page ${at} of ${count}`,
  seasonPicture: "Season, percent of baseline",
  linePicture: "Speed against load, m/s and kg",
  setsPicture: "Set to set, percent of the first",
  aheadPicture: "The weeks ahead if all goes well, sets × reps and kg",
  picturesReading:
    "Season: dots are sessions, the band is two wobbles either side of baseline, triangles lie outside it. Speed against load: nine new sets in ten fall in the band. Set to set: the band is the athlete’s usual range. Supports judgement; not medical advice.",
  weekHead: "Week of",
  raceHead: "Race",
  gymHead: "Gym",
  readingName: "Reading the picture.",
  howSureName: "How sure.",
  reading:
    "Dots are sessions; the grey band is two wobbles either side of baseline; triangles lie outside it. The thick line is where a change is placed. Upright lines are races, solid for A.",
  ofSessions: (done: number, planned: number) => `${done} of ${planned}`,
} as const;
