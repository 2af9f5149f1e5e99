import { blockText } from "../coaching/blocks/block";
import { chartReps } from "../coaching/blocks/repetition-load";
import { volumeLoad } from "../coaching/blocks/volume-load";
import type { MovedValue } from "../coaching/hold/season-hold";
import type { DayBand } from "../coaching/next-week/on-the-day/day-bands";
import type { LineReason, ProposedLine } from "../coaching/next-week/propose-line";
import type { SessionItem } from "../coaching/next-week/session/session-plan";
import { dayWords, weekdayWords } from "./days";
import { bandParts, byFeel, onlyIf, pageWords, sentence } from "./pages";
import { type PrintedNumbers, plainNumbers } from "./printed-numbers";
import { raceName } from "./race-name";
import { countWords, repetitionsWords, trimmed, withinSentence } from "./reasons-figures";
import { movedWords } from "./reasons-hold";
import { otherSettingWords } from "./reasons-notes";
import { raceRuleWords } from "./week-days";

const kg = (value: unknown) => trimmed(Number(value), 2);

/** Why a session was lighter than its plan. */
const lessWords: Readonly<Record<string, string>> = {
  slow: "a slow day",
  eased: "eased for a race",
  light: "with fewer sets, as in a lighter week",
  noted: "lighter as noted beside it",
  heavy: "a heavy day",
  extra: "besides the written week",
};

/** "Down from 95 to 85 kg", "At 50 kg": what a load is that keeps two repetitions in reserve. */
function reserveShortStart({ fromKg, toKg }: LineReason["facts"]): string {
  if (toKg === undefined) return "No more load";
  return Number(toKg) < Number(fromKg)
    ? `Down from ${kg(fromKg)} to ${kg(toKg)} kg`
    : `At ${kg(toKg)} kg`;
}

const boxCm = (cm: unknown) => `${trimmed(Number(cm), 1)} cm`;

/** "36.6 cm was missed on 25 Jun"; plates that nobody has measured by their stack. */
const missedWords = ({ day, cm, stack }: LineReason["facts"]): string =>
  `${cm === undefined ? stackWords(String(stack).split("+").map(Number)) : boxCm(cm)} was missed on ${dayWords(Number(day))}`;

/** One reason in words, from its code and facts. */
const sentences: Readonly<Record<string, string | ((facts: LineReason["facts"]) => string)>> = {
  out: "Out: nothing is proposed.",
  "not-cleared": "Not cleared: by whom? Name who cleared them in the Availability tab.",
  "under-18-no-supervisor": "Under 18, no supervisor named: nothing is proposed.",
  "see-a-doctor":
    "See a doctor or physiotherapist: bone, night or chest pain, dizziness, limping or pregnancy. Nothing is proposed until the Availability tab says what one of them allows, and who.",
  "no-sets-yet": "No work sets in the rows yet: write the first week by hand.",
  "only-jumps": ({ contacts, stack }) =>
    `No work sets in the rows, only jumps: no lift is proposed.${Number(contacts) > 0 ? ` At most ${countWords(Number(contacts), "ground contact")} a session${stack === "" ? "" : `, box jumps onto ${stackWords(String(stack).split("+").map(Number))}`}.` : ""}`,
  "no-day": "No day of this week keeps the hours asked for around races and key runs.",
  ahead: "If all before it goes as planned.",
  "step-ahead": ({ fromKg, toKg }) => `A step on, ${kg(fromKg)} to ${kg(toKg)} kg.`,
  restart: ({ days, percent, before }) =>
    `Off ${days} days longer than usual: ${kg(percent)} % off ${before === undefined ? "the load before" : `the ${kg(before)} kg of before`}${Number(percent) >= 20 ? ", half the sets" : ""}.`,
  "restart-again": ({ days, before }) =>
    `Off ${days} days longer than usual, and not yet back at the ${kg(before)} kg of before: no more than last time.`,
  "other-lifts": ({ days, eased }) =>
    `${days} days without the bar, other lifts of the legs meanwhile: ${eased ? "they count as half of it" : "same load, no step up"}.`,
  "after-marathon": ({ days }) =>
    `${days} days after a marathon: 10 % off, half the sets, until usual loads again.`,
  "grade-back": ({ before }) =>
    `Back in grades, one a week, towards the ${kg(before)} kg of before the break.`,
  "slipping-held": ({ before }) =>
    `No step up while slipping${before === undefined ? "" : `: held on the way back to the ${kg(before)} kg of before the break. Whether to climb on is yours to say`}.`,
  "slow-run": ({ days, since, kg: load, plan }) =>
    `Slipping, and ${kg(plan)} kg kept on none of the ${days} days since ${dayWords(Number(since))}: planned at the ${kg(load)} kg lifted on them, judged by the speeds of late. More is yours to set.`,
  "modified-held": ({ mayDo }) =>
    `${mayDo === "cleared" ? "Cleared" : "Modified"}: load held until the Availability tab says full or its spell ends.`,
  "last-well-below": "Last session well below usual: load held.",
  "sore-held": "Sorer than usual: load held.",
  "unwell-held": ({ day, place }) =>
    `Ask how they are first (${place}, ${dayWords(Number(day))}): load held.`,
  "lighter-day": ({ lifted, kg: load, less }) =>
    `${less === "down" ? `Down from ${kg(load)} to ${kg(lifted)} kg within the last session` : `${kg(lifted)} kg last session, ${lessWords[String(less)]}`}: planned on from ${kg(load)} kg.`,
  "lighter-plan": ({ from, kg: load }) =>
    `Lighter than the ${kg(from)} kg before it, and no row says why: planned on from ${kg(load)} kg. Was it for that week only, change the load.`,
  "in-turn": ({ day, exercise, sets, reps, kg: load }) =>
    `${sentence(String(exercise))} in turn: ${sets}×${reps} at ${kg(load)} kg on ${weekdayWords(Number(day))}.`,
  "set-by-hand": ({ sets, reps, kg: load }) =>
    `Set by you; ${[
      ...(sets === undefined ? [] : [`${sets}×${reps}`]),
      ...(load === undefined ? [] : [`${kg(load)} kg`]),
    ].join(" at ")} was proposed.`,
  "why-proposed": "Its reason:",
  "as-last-time": "As last time: its next step is yours to set.",
  "eased-as-lift": "As much lighter as the lift.",
  "new-bar": ({ bar, before }) =>
    `Plates are for the ${kg(bar)} kg bar of the last two sessions; before, it was ${kg(before)} kg.`,
  "other-speeds": (facts) =>
    `The speeds that decide the day are with ${otherSettingWords(facts)}: with any other judge by eye.`,
  "many-sessions": ({ written, most }) =>
    `${written} sessions a week are written: ${most} are planned, the most in a racing season.`,
  "new-lift": ({ exercise, before, day }) =>
    `${sentence(String(exercise))} since ${dayWords(Number(day))} in place of ${before}: planned on from it.`,
  "hold-week": ({ week, of }) => `Hold: week ${week} of ${of}.`,
  "quality-not-recorded": "Movement not recorded last session: hold.",
  "moved-poorly": "Movement was poor last session: hold until it is good.",
  "volume-not-recorded": "Repetitions not recorded last session: hold.",
  "volume-missed": ({ done, of }) =>
    `${Number(done) < Number(of) ? `${done} of ${countWords(Number(of), "set")} ${done === 1 ? "was" : "were"} done at the load` : "Repetitions were missed"}: the step is done again.`,
  "speed-not-recorded": "Speed not recorded last session: hold.",
  "speed-lost": "Speed left the usual pattern over the sets: hold.",
  "step-up": ({ fromKg, toKg, speedKnown }) =>
    `Moved well, volume done${speedKnown ? ", speed held" : ""}: a step on, ${kg(fromKg)} to ${kg(toKg)} kg.`,
  "step-too-coarse": ({ fromKg }) =>
    `A step on at ${kg(fromKg)} kg: the lightest plates would be more than the rules’ largest step.`,
  "step-level": ({ fromKg }) => `A step on at ${kg(fromKg)} kg: no rise is asked for.`,
  "step-by-session": ({ day, sets, reps, kg: load, otherSets, otherReps, otherKg }) =>
    `${weekdayWords(Number(day))}: ${sets}×${reps} at ${kg(load)} kg ${onlyIf(`${otherSets}×${otherReps}`, `${kg(otherKg)} kg`)}`,
  "plates-short": ({ wanted, kg: load }) =>
    `${kg(wanted)} kg cannot be built from the plates here: ${kg(load)} kg, the nearest under it.`,
  "under-bar": ({ wanted, bar }) =>
    `${kg(wanted)} kg is under the ${kg(bar)} kg bar: the bar alone, or a lighter one.`,
  "no-rack": ({ exercise, insteadOf }) =>
    `No rack: ${exercise} instead of ${insteadOf}, ${byFeel}.`,
  limb: ({ exercise, insteadOf, site }) =>
    `${site === "" ? "Modified" : sentence(String(site))}: ${exercise} instead of ${String(insteadOf).split(",")[0]}; ask before anything there is loaded.`,
  "built-up": ({ to }) =>
    `The lighter sets before ${kg(to)} kg last session are taken as warm-ups: say so under “kind”.`,
  "heavier-of-day": ({ day }) =>
    `Of the sessions on ${dayWords(Number(day))} the heaviest is gone on from.`,
  "sets-rose": ({ from, to }) =>
    `The sets rose from ${kg(from)} to ${kg(to)} kg last session, and the first counts: name the warm-ups under “kind”.`,
  "sets-fell": ({ from, to }) =>
    `The sets fell from ${kg(from)} to ${kg(to)} kg last session, and the first counts: all are planned at its load.`,
  "sets-as-ever": ({ sets }) => `${sets} sets, as there never were more in twelve weeks.`,
  "box-up": ({ cm }) =>
    `Box jump one step up, to ${boxCm(cm)}: rising, and nothing so high missed.`,
  "box-held": (facts) => `Box jump held: ${missedWords(facts)}.`,
  "box-lower": (facts) => `Box jump lower: ${missedWords(facts)}.`,
  "box-unknown": (facts) =>
    `Box jump: ${missedWords(facts)} and nothing lower cleared; the height is yours to set.`,
  "contact-long": "Drop jump lower: contact was slow, past 0.25 s.",
  "novice-drop": "Novices drop from 20 cm or less.",
  "no-plate": ({ exercise, insteadOf }) =>
    `No plates here for the ${insteadOf}: ${exercise} instead.`,
  "reserve-seen": ({ left }) =>
    `${repetitionsWords(Number(left))} ${left === 1 ? "was" : "were"} left in reserve last session: fewer than the two asked for.`,
  "reserve-short": (facts) =>
    `${reserveShortStart(facts)}: more would leave fewer than two repetitions in reserve.`,
  reset: ({ toKg }) => `The rotation begins again at ${kg(toKg)} kg.`,
  "fallen-held": (facts) => `No step up: ${movedWords(facts as MovedValue)}.`,
  "out-held": "Out since the last session: the step waits a week.",
  "race-week-held": "The step waits until the week after the race.",
  "race-week": ({ from, to }) => `Race week: sets ${from} to ${to}.`,
  "race-near": ({ day, race, on, from, to }) =>
    `${weekdayWords(Number(day))} prepares ${raceName(race)}, an A race on ${weekdayWords(Number(on))}: sets ${from} to ${to}.`,
  "day-before-race": (facts) => raceRuleWords(facts, "before"),
  "day-after-race": (facts) => raceRuleWords(facts, "after"),
  "no-jumps": ({ site }) =>
    `${site === "" ? "Availability" : sentence(String(site))}: no jumps until asked about.`,
  sore: ({ value, day }) => `Soreness ${value} on ${dayWords(Number(day))}: ask first.`,
  unwell: ({ day, place }) =>
    `Pain or illness was noted on ${dayWords(Number(day))} (${place}): ask before anything is lifted, and write in the Availability tab what is allowed.`,
  absence: ({ day, from, place, words }) =>
    `Absence written for ${from === day ? "" : "the week of "}${dayWords(Number(from))} (${place})${words === "" ? "" : `: “${words}”`}. Ask before anything is lifted, and write in the Availability tab what is allowed.`,
  "absence-undated": ({ place, words }) =>
    `Absence written without a day (${place}): “${words}”. Ask before anything is lifted, and write in the Availability tab what is allowed.`,
  "contacts-halved": "Ground contacts halved.",
  "above-usual": "Last session above usual: no load is added for that.",
};

const reasons = new Map(Object.entries(sentences));

/** A reason in words, that of a lift in turn with those of its own step. */
export function lineReasonWords({ code, facts, of = [] }: LineReason): string {
  const say = reasons.get(code);
  if (!say) throw new Error(`no sentence for the reason ${code}`);
  return [typeof say === "string" ? say : say(facts), ...of.map(lineReasonWords)].join(" ");
}

/** "20 + 10 + 2.5 a side"; an empty bar says so. */
export function platesWords(plates: readonly number[], numbers = plainNumbers): string {
  const words = platesCellWords(plates, numbers);
  return plates.length === 0 ? words : `${words} a side`;
}

/** "20 + 10 + 2.5", under a heading that says the rest. */
export function platesCellWords(plates: readonly number[], { mass } = plainNumbers): string {
  return plates.length === 0 ? "empty bar" : plates.map(mass).join(" + ");
}

/** "25 + 5 make 80", beside a load that is another now. */
export function platesOfOtherLoadWords(
  plates: readonly number[],
  loadKg: number,
  numbers = plainNumbers,
): string {
  const make = plates.length > 1 ? "make" : "makes";
  return `${platesCellWords(plates, numbers)} ${make} ${numbers.mass(loadKg)}`;
}

/** "5×15+5": plates from the bottom, equal ones counted. */
export function stackWords(stackKg: readonly number[]): string {
  const parts: { mass: number; count: number }[] = [];
  for (const mass of stackKg) {
    const last = parts[parts.length - 1];
    if (last?.mass === mass) last.count++;
    else parts.push({ mass, count: 1 });
  }
  return parts.map(({ mass, count }) => (count > 1 ? `${count}×${kg(mass)}` : kg(mass))).join("+");
}

/** The stack of a session's box jumps: "5×15+5", its height where heights are kept without plates, or "". */
export function boxWords({
  stackKg,
  stackCm,
}: Pick<ProposedLine["sessions"][number], "stackKg" | "stackCm">): string {
  if (stackKg.length > 0) return stackWords(stackKg);
  return stackCm === null ? "" : `${stackCm} cm`;
}

/** The same to be read, its height first: "38.2 cm (5×15+5)", "41 cm", or the plates alone where no height is known. */
export function stackToRead(
  { stackKg, stackCm }: Parameters<typeof boxWords>[0],
  { cm }: Pick<PrintedNumbers, "cm">,
): string {
  const height = stackCm === null ? "" : `${cm(stackCm)} cm`;
  if (stackKg.length === 0) return height;
  return height === "" ? stackWords(stackKg) : `${height} (${stackWords(stackKg)})`;
}

/** "0.81 or faster", "0.76 to 0.80", "0.70 or slower" */
export function bandSpeedWords(band: Pick<DayBand, "from" | "to">): string {
  const { speed, speedAfter } = bandParts(band, { speed: (value) => value.toFixed(2) });
  return `${speed} ${speedAfter}`.trim();
}

/** "85 kg", "no heavy work" */
export function bandLiftWords({ loadKg }: DayBand): string {
  return loadKg === null ? "no heavy work" : `${kg(loadKg)} kg`;
}

/** "as planned", "−5.9 %" */
export function bandChangeWords({ loadKg, share }: DayBand): string {
  if (loadKg === null) return "stop";
  return share === 0 ? "as planned" : `−${trimmed(100 * share, 1)} %`;
}

/**
 * The short reason of the list, without its full stop: the first; where that is the usual hold and the
 * last loads were lighter, what became of them, as that is why the line is read first. A load that comes
 * down to keep its reserve is told with it.
 */
export function briefWords(line: ProposedLine): string {
  const short = line.reasons.find(({ code }, at) => at > 0 && code === "reserve-short");
  const brief = firstBrief(line);
  return short ? `${brief}; ${withinSentence(reserveShortStart(short.facts))}` : brief;
}

function firstBrief(line: ProposedLine): string {
  const [usual] = line.reasons;
  const lighter = line.reasons.find(({ code }) => code.startsWith("lighter-"));
  const first = usual?.code === "hold-week" && lighter ? lighter : usual;
  const text = first ? lineReasonWords(first) : "";
  // A tab's own name may hold a full stop or a colon.
  const short = text.split(/[.:](?!\d)(?![^(]*\))/)[0] ?? "";
  return short.length > 0 && text.length > 46 ? short : text.replace(/\.$/, "");
}

/** The one short reason of the tab, as a sentence; the sidebar has them all. */
export function shortWhyWords(line: ProposedLine): string {
  const brief = briefWords(line);
  return brief === "" ? "" : `${sentence(brief)}.`;
}

/** The reason of one session's line: whose turn it is, and with a step written ahead what else is lifted. */
export function sessionWhyWords(
  line: ProposedLine,
  session: ProposedLine["sessions"][number],
): string {
  const why = whyOfSession(line, session);
  return areSpeedsOfLast(line, session) ? `${why} ${pageWords.byEyeWithAnother}`.trim() : why;
}

/** Whether the speeds that decide a session's day were taken with another tool than the baseline's. */
export const areSpeedsOfLast = (
  { reasons, exercise }: Pick<ProposedLine, "reasons" | "exercise">,
  session: ProposedLine["sessions"][number],
): boolean =>
  session.bands.length > 0 &&
  session.exercise === exercise &&
  reasons.some(({ code }) => code === "other-speeds");

function whyOfSession(
  line: ProposedLine,
  { otherwise, day }: ProposedLine["sessions"][number],
): string {
  const turn = line.reasons.find(({ code, facts }) => code === "in-turn" && facts.day === day);
  if (turn) {
    const { of = [] } = turn;
    return `${sentence(String(turn.facts.exercise))} in turn. ${shortWhyWords({ ...line, reasons: of })}`.trim();
  }
  return otherwise === null
    ? shortWhyWords(line)
    : `Only if the session before went well; else ${blockText(otherwise.block)} at ${kg(otherwise.loadKg)} kg again.`;
}

/** What stands in the answer's cell when another exercise takes the main lift's place. */
export function insteadCellWords({ exercise, loadKg }: SessionItem): string {
  return `${exercise}, ${loadKg === null ? byFeel : `last ${kg(loadKg)} kg`}`;
}

/** What follows if the session is written as it stands. */
export function consequenceWords(session: ProposedLine["sessions"][number]): string[] {
  const { contacts, hoursToRace } = session;
  return [
    ...(session.instead
      ? []
      : [reserveWords(session), `Volume load ${trimmed(volumeLoad([session]), 2)} kg.`]),
    ...(contacts > 0 ? [`At most ${countWords(contacts, "ground contact")}.`] : []),
    ...(hoursToRace === null ? [] : [`${hoursOrDays(hoursToRace)} to the next race.`]),
  ];
}

function reserveWords({ reserve }: Pick<ProposedLine["sessions"][number], "reserve">): string {
  if (reserve === null)
    return "Repetitions in reserve not known: no strength estimate, none written down.";
  const { reps, from } = reserve;
  // What somebody feels is left is a whole number; at the load it was felt at it is told as it was written.
  const told = from === "seen" ? Math.floor(reps + 1e-9) : reps;
  const by = from === "seen" ? "by those written down last" : "at the cautious end";
  return told > chartReps
    ? `More than ten repetitions in reserve ${by}.`
    : `About ${repetitionsWords(Math.max(0, told))} in reserve ${by}${told < 2 ? ": fewer than the two asked for" : ""}.`;
}

/** Hours in which a rule may be broken are told as hours, longer times in days. */
const hoursOrDays = (hours: number): string =>
  hours > 96 ? countWords(Math.floor(hours / 24), "day") : `${Math.floor(hours)} h`;
