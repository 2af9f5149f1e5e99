import { usualBarKg } from "../coaching/blocks/usual-bar";
import { decideToday } from "../coaching/next-week/on-the-day/decide-today";
import { ruleDefinitions, usualRules } from "../coaching/record/squad-rules";
import { kgFromPounds } from "../coaching/units/mass";
import { accept, refuse } from "../outcome";
import { plausible } from "../rows/column/quantity";
import { foundText } from "../rows/value/found-text";
import { dayDecisionWords } from "../words/day-load";
import { printedNumbers } from "../words/printed-numbers";
import { elementwise } from "./arguments/elementwise";
import { numbersOf, optionalNumberCell } from "./arguments/number-cell";
import { seenToday } from "./arguments/seen-today";
import { optionalTable } from "./arguments/table-argument";
import { thrown } from "./arguments/thrown";
import type { SheetFunction } from "./sheet-function";

const names = ["planned_load", "sets_left", "step"];
const mayBeBlank = ["usual_speed", "speed_load", "bar", "low_speed", "share_off"];
const figuresSaid = /^\s*(kg|lbs?)?\s*,?\s*$/i;

export const dayLoadFunction: SheetFunction = {
  name: "DAY_LOAD",
  summary:
    "What to lift today from the marker's or first set's speed: as planned, lighter with the real percentage, repeat the set, or no heavy work.",
  parameters: [
    {
      name: "speeds",
      help: "Today's speeds in one cell, such as 0.79 0.80 0.78, a repeated marker after “then”; a dropped repetition as -; or by eye: fast, usual, slow or heavy, ill, in pain. Blank tells the speed that keeps the plan.",
    },
    {
      name: "usual_speed",
      help: "What the mean of that set usually is, m/s, such as EXPECTED_SPEED’s usual mean; blank when judged by eye.",
    },
    { name: "planned_load", help: "Load planned for the work sets, kg." },
    { name: "sets_left", help: "Work sets still to do." },
    { name: "step", help: "Smallest change of load on the bar, kg." },
    {
      name: "speed_load",
      help: "Load whose speed was taken, kg, named in the answer.",
      optional: true,
    },
    {
      name: "plates",
      help: "The Plates table with its header row, for loads and plates a side that exist in this gym.",
      optional: true,
    },
    { name: "bar", help: "Mass of the bar, kg; 20 kg or 45 lb when left out.", optional: true },
    {
      name: "low_speed",
      help: "Low end of those means, m/s, such as EXPECTED_SPEED’s low mean: a set at or under it is unusual; left out, the bands judge alone.",
      optional: true,
    },
    {
      name: "share_off",
      help: "Share off a clearly slow day and a slow one by eye, half of it a slightly slow one; 0.1 when left out.",
      optional: true,
    },
    {
      name: "figures",
      help: "“,” writes a decimal comma, “lb” takes and writes pounds, “lb,” both.",
      optional: true,
    },
  ],
  results: ["lift today"],
  examples: [
    {
      formula: '=DAY_LOAD("0.79 0.80 0.78", 0.86, 85, 3, 2.5, 67.5)',
      args: ["0.79 0.80 0.78", 0.86, 85, 3, 2.5, 67.5],
      result: "80 kg for the remaining 3 sets (−5.9 %): 0.07 m/s slower than usual at 67.5",
    },
    {
      formula: '=DAY_LOAD("", 0.86, 85, 3, 2.5)',
      args: ["", 0.86, 85, 3, 2.5],
      result: "0.81 or faster: lift 85",
    },
    {
      formula: '=DAY_LOAD("0.79 0.80 0.78", 0.86, 85, 3, 2.5, 67.5, "", 20, 0.76)',
      args: ["0.79 0.80 0.78", 0.86, 85, 3, 2.5, 67.5, "", 20, 0.76],
      result:
        "repeat the set once; the same again: 80 kg (−5.9 %). 0.07 m/s slower than usual at 67.5",
    },
  ],
  compute: ([speeds, usual, planned, sets, step, speedLoad, plates, bar, low, off, figures]) => {
    const { reading } = thrown(optionalTable("Plates", "plates", plates));
    const written = String(figures ?? "");
    if (!figuresSaid.test(written))
      thrown(refuse("figures-unknown", { found: foundText(figures) }));
    const numbers = printedNumbers({
      unit: /lb/i.test(written) ? "lb" : "kg",
      mark: written.includes(",") ? "," : ".",
    });
    const kg = (given: number) => (numbers.unit === "lb" ? kgFromPounds(given) : given);
    const given = [speeds, planned, sets, step, usual, speedLoad, bar, low, off];
    return elementwise(
      ["speeds", ...names, ...mayBeBlank].map((name, at) => ({
        name,
        cells: given[at],
        needed: name === "planned_load",
      })),
      (seenCell, ...cells) => {
        const seen = seenToday(seenCell);
        if (seen.kind === "unread") return accept(numbers.marked(seen.say));
        const needed = numbersOf(cells, names);
        if (!needed.ok) return needed;
        const others = numbersOf(cells.slice(names.length), mayBeBlank, optionalNumberCell);
        if (!others.ok) return others;
        const [plannedLoad, setsLeft, stepSize] = needed.value as [number, number, number];
        const [usualSpeed = null, seenAt = null, barMass = null, lowSpeed = null, shareOff] =
          others.value;
        if (lowSpeed !== null && usualSpeed !== null && lowSpeed > usualSpeed)
          return refuse("low-above-usual", { low: lowSpeed, usual: usualSpeed });
        const barKg = barMass === null ? usualBarKg(numbers.unit) : kg(barMass);
        if (!(barKg >= plausible.barKg.low && barKg <= plausible.barKg.high))
          return refuse("bar-impossible", { bar: barMass!, unit: numbers.unit });
        const share = shareOff ?? usualRules.loadDrop;
        const { least, most } = ruleDefinitions.loadDrop;
        if (share < least || share > most) return refuse("share-off-impossible", { share });
        const decision = decideToday(seen, {
          plannedKg: kg(plannedLoad),
          setsLeft,
          stepKg: kg(stepSize),
          usualSpeed,
          lowSpeed,
          usualDrop: share,
          gym:
            reading.records.length > 0 || barMass !== null
              ? {
                  plates: reading.records,
                  barKg,
                }
              : null,
        });
        if (!decision.ok) return decision;
        return accept(
          dayDecisionWords(decision.value, seenAt === null ? null : kg(seenAt), numbers),
        );
      },
    );
  },
};
