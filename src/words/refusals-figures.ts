import type { Refusal } from "../outcome";
import { trimmed } from "./reasons-figures";

type Facts = Refusal["facts"];
/** No flight or contact is shorter: what was read as ms is told in them, s. */
const shortestS = 0.05;
const time = (of: string | number | undefined) =>
  Number(of) < shortestS ? `${trimmed(1000 * Number(of), 2)} ms` : `${trimmed(Number(of), 3)} s`;
const kg = (value: string | number | undefined) => `${trimmed(Number(value), 2)} kg`;

/** Why single figures cannot be given. */
export const figureRefusals = {
  "loss-few-reps": ({ reps }: Facts) =>
    `Velocity loss needs at least two repetitions of a set, side by side or in one cell; ${Number(reps) === 0 ? "no speed was" : "one was"} given.`,
  "cap-impossible": ({ cap }: Facts) =>
    `A cap of ${cap} is not possible: give a fraction up to 0.5, such as 0.2. Speeds go into one range, and a decimal comma parts arguments, too: write 0.79, or “0,79”.`,
  "loss-speed-impossible": ({ rep, speed }: Facts) =>
    `Repetition ${rep} has a speed of ${speed}: speeds are above 0, in m/s.`,
  "speeds-unreadable": ({ found }: Facts) =>
    `Not a speed (${found}): write speeds in m/s as “0.62 0.60 0.57” or one to a cell.`,
  "speed-implausible": ({ rep, speed }: Facts) =>
    `Repetition ${rep} has a speed of ${speed} m/s, which no bar moves at: type 0.62 for 0.62 m/s.`,
  "speed-missing": ({ rep }: Facts) =>
    `The speed of repetition ${rep} is missing: fill it in, or leave it out.`,
  "flight-impossible": ({ flightS }: Facts) =>
    `A flight time of ${time(flightS)} is not possible: give seconds (0.52) or milliseconds (520).`,
  "landing-impossible": ({ landingCm }: Facts) =>
    `A landing ${trimmed(Number(landingCm), 2)} cm from the take-off is not possible: give its height in cm.`,
  "landing-not-reached": ({ flightS, landingCm }: Facts) =>
    `A flight of ${time(flightS)} does not come down on a landing of ${trimmed(Number(landingCm), 1)} cm: check both figures.`,
  "height-impossible": ({ heightCm }: Facts) =>
    `A height of ${trimmed(Number(heightCm), 2)} cm is not possible: give it in cm.`,
  "contact-impossible": ({ contactS }: Facts) =>
    `A contact time of ${time(contactS)} is not possible: give seconds (0.18) or milliseconds (180).`,
  "stack-unreadable": ({ found }: Facts) =>
    found === ""
      ? "The stack is blank: write the plates from the bottom up as “5x15+5”."
      : `The stack “${found}” cannot be read: write the plates from the bottom up as “5x15+5”, five of 15 kg and one of 5 kg.`,
  "stack-count": ({ found, count }: Facts) =>
    `${count} equal plates in “${found}” is rather a mass written before its count: “5x15” is five plates of 15 kg.`,
  "plate-not-measured": ({ place, mass, unit }: Facts) =>
    `Plate ${place} of the stack is ${trimmed(Number(mass), 2)} ${unit}, and no row of the Plates table gives it a thickness that can be used: measure it and write it there.`,
  "plates-not-owned": ({ mass, unit, owned }: Facts) =>
    `The stack needs more ${trimmed(Number(mass), 2)} ${unit} plates than the ${owned} the Plates table says there are.`,
  "attempt-missed": () => "The attempt was missed, so it has no height.",
  "attempt-without-height": () => "The attempt has no height, stack or flight time.",
  "load-impossible": ({ loadKg }: Facts) =>
    `A load of ${kg(loadKg)} is not possible: give the whole load on the bar in kg.`,
  "reps-impossible": ({ reps }: Facts) =>
    `${reps} repetitions are not possible: give a whole number from 1 to 30.`,
  "reps-not-charted": ({ reps, most }: Facts) =>
    `${reps} repetitions are outside the chart, which goes from 1 to ${most}.`,
  "strength-impossible": ({ strengthKg }: Facts) =>
    `A strength of ${kg(strengthKg)} is not possible: give it in kg.`,
  "speed-impossible": ({ speed }: Facts) =>
    `A speed of ${speed} m/s is not possible: type 0.62 for 0.62 m/s.`,
  "share-off-impossible": ({ share }: Facts) =>
    `${share} is not a share to take off: give a fraction from 0 to 0.3, such as 0.1.`,
  "low-above-usual": ({ low, usual }: Facts) =>
    `low_speed (${low}) is above usual_speed (${usual}): give the low end of the usual speeds. Are two arguments swapped?`,
  "bar-impossible": ({ bar, unit }: Facts) =>
    `A bar of ${bar} ${unit} is not possible: give its mass in ${unit}, or leave it out.`,
  "figures-unknown": ({ found }: Facts) =>
    `figures is not known (${found}): give “,” for a decimal comma, “lb” for pounds, “lb,” for both, or leave it out.`,
  "step-impossible": ({ stepKg }: Facts) =>
    `A step of ${kg(stepKg)} is not possible: give the smallest change of load, such as 2.5.`,
  "step-too-large": ({ stepKg, loadKg }: Facts) =>
    `No load is left below ${kg(loadKg)} in steps of ${kg(stepKg)}: give a smaller step.`,
  "reserve-never": ({ loadKg, strengthKg }: Facts) =>
    `No load up to ${kg(loadKg)} leaves two repetitions in reserve at a strength of ${kg(strengthKg)}: check both figures.`,
  "sets-left-impossible": ({ setsLeft }: Facts) =>
    `${setsLeft} sets left are not possible: give a whole number from 0 to 20.`,
  "usual-speed-missing": () =>
    "No usual speed to judge by: give it in m/s, or judge by eye (fast, usual, slow, ill).",
  "racks-impossible": ({ racks }: Facts) =>
    `${racks} racks are not possible: give a whole number from 1 to 20.`,
  "racks-too-few": ({ bars, racks }: Facts) =>
    `The session uses ${bars} kinds of bar or lift at ${racks} ${Number(racks) === 1 ? "rack" : "racks"}: only those of one kind share a rack, so give a rack for each.`,
  "room-too-short": ({ minutes, minutesOfRoom }: Facts) =>
    `The lifts need ${minutes} min at these racks, and the room is free for ${minutesOfRoom}: add a rack, or lift in two groups.`,
  "weeks-impossible": ({ weeks }: Facts) =>
    `A season of ${weeks} weeks is not possible: give a whole number from 1 to 52.`,
  "load-under-bar": ({ loadKg, barKg }: Facts) =>
    `${kg(loadKg)} is less than the bar's ${kg(barKg)}.`,
  "load-not-on-plates": ({ loadKg, barKg }: Facts) =>
    `${kg(loadKg)} cannot be made with these plates on a ${kg(barKg)} bar.`,
} as const;
