import { nameKey } from "../../coaching/record/name-key";
import {
  type RuleKey,
  ruleDefinitions,
  type SquadRules,
  usualRules,
} from "../../coaching/record/squad-rules";
import { textColumn } from "../column/text-column";
import { spellingLink } from "../name/near-name";
import { spellingOf } from "../name/spelling";
import type { Reading } from "../reading";
import type { TableView } from "../table-view";
import { isBlank } from "../value/blank";
import { numberFromText } from "../value/number-text";
import { yesNo } from "../value/yes-no";
import { reportBlank } from "./needed";
import { readLines } from "./read-lines";

/** One setting from the Rules table. */
export type RuleSetting = { readonly row: number; readonly key: RuleKey; readonly value: number };

const keys = new Map(
  (Object.keys(ruleDefinitions) as RuleKey[]).flatMap((key) => [
    [nameKey(ruleDefinitions[key].label), key] as const,
    [key.toLowerCase(), key] as const,
  ]),
);

/** Rows of the Rules table; a rule nobody knows, set twice or out of bounds is reported. */
export function readRuleRows(view: TableView): Reading<RuleSetting> {
  const { fields, log } = view;
  const name = textColumn(view, fields.rule, true);
  const at = fields.value!.index;
  const seen = new Map<RuleKey, number>();
  return readLines<RuleSetting>(view, (line, row) => {
    const rule = name(line, row);
    if (rule === "") return reportBlank(view, fields.rule, row);
    const report = (code: string, column: number, facts: Record<string, string | number> = {}) => {
      log.add(code, row, column, line[column], { rule, ...facts }, true);
      return null;
    };
    const key = keys.get(nameKey(rule));
    if (key === undefined) return report("rule-unknown", fields.rule!.index, nearRule(rule));
    const earlier = seen.get(key);
    if (earlier !== undefined)
      return report("rule-twice", fields.rule!.index, { earlierRow: log.rowNumber(earlier) });
    const cell = line[at];
    if (isBlank(cell)) return reportBlank(view, fields.value, row);
    const { least, most, unit } = ruleDefinitions[key];
    const value = unit === "1 for yes" ? yesValue(cell) : ruleValue(cell);
    if (value === null) return report("not-a-number", at, { heading: fields.value!.heading, unit });
    if (value < least || value > most) {
      const mend = unit === "fraction" && value / 100 >= least && value / 100 <= most;
      return report("rule-out-of-bounds", at, {
        low: least,
        high: most,
        unit,
        ...(mend ? { mend: value / 100 } : {}),
      });
    }
    seen.set(key, row);
    return { row: row + 1, key, value };
  });
}

/** No rule's name with a slip in it is longer. */
const longestName = 60;

/** The one rule whose name a name may be a slip or a part of, as a fact; none where several are. */
function nearRule(name: string): Record<string, string> {
  if (name.length > longestName) return {};
  const spelling = spellingOf(name);
  const near = Object.values(ruleDefinitions).filter(
    ({ label }) => spellingLink(spelling, spellingOf(label)) !== null,
  );
  return near.length === 1 ? { near: near[0]!.label } : {};
}

/** "y" and "no" say the same as 1 and 0. */
function yesValue(cell: unknown): number | null {
  const said = yesNo(cell);
  return said === null ? ruleValue(cell) : Number(said);
}

function ruleValue(cell: unknown): number | null {
  if (typeof cell === "boolean") return cell ? 1 : 0;
  if (typeof cell === "number") return Number.isFinite(cell) ? cell : null;
  if (typeof cell !== "string") return null;
  const text = cell.trim();
  const percent = text.endsWith("%");
  const bare = percent ? text.slice(0, -1) : text.replace(/^([\d.,]+)\s*[a-z/]+$/i, "$1");
  const number = numberFromText(bare);
  if (number === null || number.unsure) return null;
  return percent ? number.value / 100 : number.value;
}

/** The squad's rules: what its table sets, and the usual value for the rest. */
export function squadRules(settings: readonly RuleSetting[]): SquadRules {
  return { ...usualRules, ...Object.fromEntries(settings.map(({ key, value }) => [key, value])) };
}
