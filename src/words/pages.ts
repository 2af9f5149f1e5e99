import type { Day } from "../coaching/calendar/day";
import type { DayBand } from "../coaching/next-week/on-the-day/day-bands";
import { dayWords } from "./days";
import type { PrintedNumbers } from "./printed-numbers";
import { countWords } from "./reasons-figures";

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

/** "18:00" */
export const clock = (minute: number): string =>
  `${String(Math.floor(minute / 60)).padStart(2, "0")}:${String(minute % 60).padStart(2, "0")}`;

/** The speeds of a band, the figure apart from the words after it. */
export function bandParts(
  { from, to }: Pick<DayBand, "from" | "to">,
  { speed }: Pick<PrintedNumbers, "speed">,
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

/** "0.80 to 0.82: repeat the set first": the band's speeds at which the leading set is first repeated; "repeat the set first" in all of it. */
export function bandAgainWords(
  { from, to, repeatFrom }: Pick<DayBand, "from" | "to" | "repeatFrom">,
  numbers: Pick<PrintedNumbers, "speed">,
): string {
  if (repeatFrom === null) return "";
  const all = "repeat the set first";
  if (repeatFrom === from) return all;
  const { speed, speedAfter } = bandParts({ from: repeatFrom, to }, numbers);
  return `${`${speed} ${speedAfter}`.trim()}: ${all}`;
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

/** How to load what has no figure. */
export const byFeel = "by feel, 2–3 in reserve";

/** On what terms a step written ahead is lifted, and what else. */
export const onlyIf = (block: string, load: string): string =>
  `only if the session before moved well, was done in full and held its speed; otherwise ${block} at ${load} again.`;

/** What the script writes on the printed pages; labels that only paper and sidebar draw stand apart. */
export const pageWords = {
  nobodyMoved: "Nobody is slipping or rising: there is no chart to print",
  nothingToPrint: "Nobody lifts in that week: there is no page to print",
  /** Long ones run on: how many sheets of paper come of them only the print window knows. */
  ready: {
    cards: (count: number) => `${countWords(count, "card")} ready to print`,
    "rack plan": (count: number) => `${countWords(count, "rack plan")} ready to print`,
    "week page": () => "Page for the head coach ready to print",
    pictures: (count: number) => `Charts of ${countWords(count, "athlete")} ready to print`,
  },
  orIll: "or slower, or ill",
  otherwise: (block: string, load: string) => sentence(onlyIf(block, load)),
  stopByForm: "End a set when the movement goes.",
  contacts: (count: number) => `${countWords(count, "contact")} in all.`,
  noJumps: "No jumps until asked about.",
  noJumpsToday: "No jumps in this session.",
  stopRule:
    "End a set at two repetitions running under the speed floor, or when the movement goes.",
  halfSets: "Fewer sets this week.",
  setsBeforeRace: "Fewer sets before the race.",
  speedsOfLast: "The speeds are of last time’s tool and gym: with another judge by eye.",
  byEyeWithAnother: "If the bar tool is not last time’s, judge by eye.",
  poorMovement: "Movement was poor last time: watch it first.",
  byFeel: `Loads ${byFeel}.`,
  instead: (usual: string) => `in place of ${usual}`,
  aSide: (plates: string) => `${plates} a side`,
  emptyBar: "empty bar",
  underBar: "less than the bar",
  rack: (n: number) => `Rack ${n}`,
  bar: (load: string) => `${load} bar`,
  back: (athlete: string, change: string) => `Next round, back to ${athlete}: ${change}`,
  noJumpsFor: (athletes: string) => `No jumps: ${athletes}.`,
  nextWeek: "Next week",
  theWeekOf: (monday: Day) => `The week of ${dayWords(monday)}`,
  setsOfWeek: (week: string) => `${week}, sets × reps`,
  weekOf: (day: string) => `Week of ${day}, for the head coach`,
  written: (day: string) => `written ${day}`,
  pageOf: (at: number, count: number) => `page ${at} of ${count}`,
  ofSessions: (done: number, planned: number) => `${done} of ${planned}`,
} as const;
