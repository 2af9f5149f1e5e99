import type { RuleDefinition } from "../coaching/record/squad-rules";

type Rule = Pick<RuleDefinition, "unit" | "usual" | "least" | "most"> & { readonly now: number };

/** Words of the list of rules. */
export const ruleListWords = {
  title: "Rules",
  help: "A row of the Rules tab with one of these names changes it for the squad.",
  show: (count: number) => `All ${count} rules`,
  set: "set by you",
} as const;

/** "20 %, usual 10 %, allowed 2–33 %": the value in force first; the usual is named when it differs. */
export function ruleWords({ unit, usual, least, most, now }: Rule): string {
  const bare = (value: number) => (unit === "fraction" ? percent(value) : String(value));
  const of = unit === "fraction" ? " %" : unit === "1 for yes" ? "" : ` ${unit}`;
  if (unit === "1 for yes")
    return now === usual ? `${now} (1 for yes)` : `${now} (1 for yes), ${ruleListWords.set}`;
  const allowed = `allowed ${bare(least)}–${bare(most)}${of}`;
  return now === usual
    ? `${bare(now)}${of}; ${allowed}`
    : `${bare(now)}${of}, ${ruleListWords.set}; usual ${bare(usual)}, ${allowed}`;
}

function percent(share: number): string {
  return String(Math.round(share * 1000) / 10);
}
