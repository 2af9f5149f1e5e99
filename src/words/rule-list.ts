import { ruleSources } from "../coaching/record/rule-sources";
import { type RuleDefinition, type RuleKey, ruleDefinitions } from "../coaching/record/squad-rules";

/** Words of the list of rules. */
export const ruleListWords = {
  title: "Rules",
  help: "A row of the Rules tab with one of these names changes it for the squad.",
  show: (count: number) => `All ${count} rules`,
  set: "set by you",
} as const;

/** The rules in their order, in words; `now` holds the values in force. */
export function listedRules(
  now: Readonly<Record<string, number>>,
): { readonly rule: string; readonly value: string; readonly source: string }[] {
  return (Object.keys(ruleDefinitions) as RuleKey[]).map((key) => {
    const definition = ruleDefinitions[key];
    const value = ruleWords(definition, now[key] ?? definition.usual);
    return { rule: definition.label, value, source: ruleSources[key] };
  });
}

/** "20 %, set by you; usual 10, allowed 2–33 %": the value in force first; the usual is named when it differs. */
export function ruleWords({ unit, usual, least, most }: RuleDefinition, now: number): string {
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
