import { speedHair } from "../coaching/bar-speed/hundredths";
import type { DayDecision } from "../coaching/next-week/on-the-day/day-decision";
import { plainNumbers } from "./printed-numbers";
import { countWords, trimmed } from "./reasons-figures";

export const noHeavyWork = "no heavy work today";
/** The caution in a cell's few words; the tab has it in full above its rows. */
const askFirst = "Ask first. Bone, night or chest pain, dizziness or limping: see a doctor.";

const lookAtBar = "look at the load on the bar and at the tool";
/** Nobody is so many m/s slower for being tired: another load or a misread set is likelier (common practice, no source). */
const tiredMost = 0.3;

const off = (share: number) => `−${trimmed(100 * share, 1)} %`;

/**
 * The day's decision in one line for a phone: what to do first, then the reason, as a narrow cell
 * shows its beginning.
 *
 * @param seenAtKg load whose speed was taken, kg; null when it is not told
 */
export function dayDecisionWords(
  decision: DayDecision,
  seenAtKg: number | null,
  numbers = plainNumbers,
): string {
  const { mass, withUnit, speed, marked } = numbers;
  const share = (of: number) => marked(off(of));
  const under = (slower: number | null) =>
    slower === null
      ? "slow by eye"
      : `${speed(slower)} m/s slower than usual${seenAtKg === null ? "" : ` at ${mass(seenAtKg)}`}`;
  const plan = ({ loadKg, builtKg }: { loadKg: number; builtKg: number | null }) =>
    builtKg === null ? mass(loadKg) : `${mass(loadKg)} (these plates make ${mass(builtKg)})`;
  switch (decision.kind) {
    case "before the set": {
      const { keepsFrom } = decision;
      return keepsFrom === null
        ? `usual by eye: lift ${plan(decision)}`
        : `${speed(keepsFrom)} or faster: lift ${plan(decision)}`;
    }
    case "as planned":
      if (decision.doubtful !== undefined)
        return `${lookAtBar}: ${speed(decision.doubtful)} m/s faster than usual. As planned: lift ${plan(decision)}`;
      return decision.above
        ? `above usual: lift ${plan(decision)} as planned, add nothing`
        : `as planned: lift ${plan(decision)}`;
    case "nothing lighter":
      return `nothing lighter than the bar: lift ${mass(decision.loadKg)}, watch the movement. ${under(decision.slower)}`;
    case "repeat the marker": {
      const { ifSame, slower } = decision;
      const then =
        ifSame.kind === "lighter"
          ? `${withUnit(ifSame.loadKg)} (${share(ifSame.share)})`
          : "no heavy work";
      return `repeat the set once; the same again: ${then}. ${under(slower)}`;
    }
    case "lighter": {
      const { loadKg, slower, setsLeft, plates } = decision;
      const sets = setsLeft === 0 ? "" : ` for the remaining ${countWords(setsLeft, "set")}`;
      const side = plates.length === 0 ? "" : `, ${plates.map(mass).join("+")} a side`;
      return `${withUnit(loadKg)}${sets} (${share(decision.share)}): ${under(slower)}${side}`;
    }
    case "no heavy work":
      return decision.slower === null
        ? `${noHeavyWork}: pain or illness. ${askFirst}`
        : `${noHeavyWork}: ${under(decision.slower)}${decision.slower > tiredMost + speedHair ? `; ${lookAtBar}` : ""}`;
  }
}

/** What stands in the answer's cell when the typed one is neither a speed nor a word for one. */
export function notASpeedWords(found: string, perhaps: number | null): string {
  return perhaps === null
    ? `${found} is not a bar speed: type a speed such as 0.86, or fast, usual, slow or ill.`
    : `${found} is not a bar speed in m/s. Type ${perhaps.toFixed(2)}?`;
}
