import type { Refusal } from "../outcome";
import { dayWords } from "./days";
import { countWords, trimmed, withinSentence } from "./reasons-figures";

type Facts = Refusal["facts"];
const lift = ({ exercise }: Facts) => withinSentence(String(exercise));

/** Why a squad's rows give no figure for one athlete. */
export const rowRefusals = {
  "athlete-blank": () =>
    "athletes is blank: give a name, a column of names, or the Athletes table.",
  "athlete-not-in-rows": ({ athlete, tables, near }: Facts) =>
    `No row of ${athlete} in ${tables} up to that day${near === "" ? ": check the spelling and the date." : `: is this ${near}?`}`,
  "athlete-not-in-sets": ({ athlete }: Facts) =>
    `No set of ${athlete} with a speed up to that day: check the spelling and the date.`,
  "athlete-not-in-jumps": ({ athlete }: Facts) =>
    `No jump of ${athlete} up to that day: check the spelling and the date.`,
  "no-such-test": ({ athlete, test }: Facts) =>
    `No jump of ${athlete} in a test called “${test}”: write the test as the Jumps table does.`,
  "test-without-heights": ({ athlete, test }: Facts) =>
    `No ${withinSentence(String(test))} of ${athlete} gives a height: fill in height, stack or flight time, and the Plates table for stacks.`,
  "no-speed-sets": (facts: Facts) =>
    `Too few rows: no ${lift(facts)} set with a speed and a load up to that day.`,
  "no-load-on-bar": (facts: Facts) =>
    `Every ${lift(facts)} set has a load of 0 kg: a line needs the load on the bar.`,
  "line-not-falling": (facts: Facts) =>
    `Speed does not fall with load in ${countWords(Number(facts.sets), `${lift(facts)} set`)}: no line is drawn. Check the loads and speeds.`,
  "one-set": ({ day }: Facts) =>
    `Only one work set with a speed on ${dayWords(Number(day))}: two are needed to compare.`,
  "set-loads-differ": ({ day }: Facts) =>
    `No later set on ${dayWords(Number(day))} has the first set's load and setting, so nothing can be compared.`,
  "strength-few-days": (facts: Facts) =>
    `Too few rows: ${countWords(Number(facts.days), "recent day")} of ${lift(facts)}; two at different loads are needed.`,
  "strength-loads-alike": ({ lightestKg, heaviestKg }: Facts) =>
    `The loads are too alike (${trimmed(Number(lightestKg), 2)} to ${trimmed(Number(heaviestKg), 2)} kg): they must spread over a tenth of the heaviest.`,
  "strength-below-minimum": ({ minimumSpeed }: Facts) =>
    `The line lies below the minimum speed of ${trimmed(Number(minimumSpeed), 2)} m/s at every load: no strength estimate.`,
  "strength-too-wide": ({ percent }: Facts) =>
    `The rows leave the strength estimate too wide${percent === undefined ? "" : ` (± ${percent} %)`}: more sets at lighter and heavier loads would narrow it.`,
  "diary-without-rows": ({ athlete }: Facts) =>
    `Nothing to compare for ${athlete}: no figure in Diary and no row in Runs up to that day.`,
  "season-without-level": ({ athlete, sessions }: Facts) =>
    `Too few rows of ${athlete}: ${countWords(Number(sessions), "session")} with a speed or a jump; about eight are needed before a day can be called unusual.`,
  "load-without-unit": ({ load }: Facts) =>
    `loads names no unit (${load}), and the sets are in lb: write ${load} lb, or ${load} kg.`,
  "load-past-line": ({ loadKg }: Facts) =>
    `${trimmed(Number(loadKg), 2)} kg is past the end of the line: no speed is expected there.`,
  "speed-too-wide": ({ loadKg, high }: Facts) =>
    `The rows leave the speed at ${trimmed(Number(loadKg), 2)} kg too wide (0 to ${trimmed(Number(high), 1)} m/s): recent sets near that load would narrow it.`,
} as const;
