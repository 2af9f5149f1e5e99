import type { Validation } from "../../workbook-data";
import { attribute, escaped, unescaped } from "./xml-text";

/** The lists of values among a tab's validations; another kind gives none and stays in the file. */
export function listsOf(xml: string): readonly Validation[] {
  const tag = xml.slice(0, xml.indexOf(">") + 1);
  const formula = unescaped(/<formula1\b[^<>]*>([\s\S]*?)<\/formula1>/.exec(xml)?.[1] ?? "");
  const quoted = /^"((?:[^"]|"")*)"$/.exec(formula.trim());
  const ranges = attribute(tag, "sqref");
  if (attribute(tag, "type") !== "list" || !quoted || ranges === null) return [];
  const help = attribute(tag, "prompt");
  const values = quoted[1]!.replaceAll('""', '"').split(",");
  const turnsAway =
    /^(1|true)$/.test(attribute(tag, "showErrorMessage") ?? "") &&
    (attribute(tag, "errorStyle") ?? "stop") === "stop";
  return ranges.split(/\s+/).map((range) => ({
    range: range.replace(/^(\$?[A-Z]+\$?\d+:\$?[A-Z]+)\$?1048576$/, "$1"),
    values,
    refusesOthers: turnsAway,
    ...(help !== null && help !== "" && { help }),
  }));
}

/** A list as the file writes it; null when the file has no room for it (255 signs). */
export function listXml({ range, values, refusesOthers = true, help }: Validation): string | null {
  const list = `"${values.join(",").replaceAll('"', '""')}"`;
  if (list.length > 257 || values.some((value) => value.includes(","))) return null;
  const whole = /^[A-Z]+:[A-Z]+$/.test(range)
    ? range.replace(/([A-Z]+):([A-Z]+)/, "$11:$21048576")
    : range;
  const sqref = whole.replace(/^([A-Z]+\d+:[A-Z]+)$/, "$11048576");
  const said = help ? ` showInputMessage="1" prompt="${escaped(help.slice(0, 255))}"` : "";
  const refuses = refusesOthers ? ' showErrorMessage="1"' : "";
  return `<dataValidation type="list" allowBlank="1"${refuses}${said} sqref="${sqref}"><formula1>${escaped(list)}</formula1></dataValidation>`;
}
