import type { Validation } from "../../workbook-data";
import { memoryTab } from "./library";
import { attribute, escaped, unescaped } from "./xml-text";

/** As many values as a list may name; a squad has sixty athletes. */
const mostRemembered = 10_000;
const quotedList = /^"((?:[^"]|"")*)"$/;
const rememberedList = new RegExp(`^'?${memoryTab}'?!\\$B\\$(\\d{1,7}):\\$B\\$(\\d{1,7})$`);

const formulaOf = (xml: string) =>
  unescaped(/<formula1\b[^<>]*>([\s\S]*?)<\/formula1>/.exec(xml)?.[1] ?? "").trim();

/** Whether a list's values stand among what the add-on remembers. */
export const isRemembered = (xml: string) => rememberedList.test(formulaOf(xml));

/**
 * The lists of values among a tab's validations; another kind gives none and stays in the file.
 *
 * @param remembered a value of what the add-on remembers, by its row from 1
 */
export function listsOf(xml: string, remembered: (row: number) => string): readonly Validation[] {
  const tag = xml.slice(0, xml.indexOf(">") + 1);
  const formula = formulaOf(xml);
  const quoted = quotedList.exec(formula);
  const [, from, to] = rememberedList.exec(formula) ?? [];
  const ranges = attribute(tag, "sqref");
  if (attribute(tag, "type") !== "list" || ranges === null || !(quoted || from)) return [];
  const help = attribute(tag, "prompt");
  const values = quoted
    ? quoted[1]!.replaceAll('""', '"').split(",")
    : Array.from({ length: Math.min(Number(to) - Number(from) + 1, mostRemembered) }, (_, at) =>
        remembered(Number(from) + at),
      );
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

const inline = (values: readonly string[]) => `"${values.join(",").replaceAll('"', '""')}"`;

/** Whether a file has room for a list beside its cells (255 signs and its quotes). */
export function fitsInline(values: readonly string[]): boolean {
  return inline(values).length <= 257 && !values.some((value) => value.includes(","));
}

/**
 * A list as the file writes it.
 *
 * @param row where the values stand among what the add-on remembers; null when they stand here
 */
export function listXml(
  { range, values, refusesOthers = true, help }: Validation,
  row: number | null,
): string {
  const list =
    row === null ? inline(values) : `${memoryTab}!$B$${row}:$B$${row + values.length - 1}`;
  const whole = /^[A-Z]+:[A-Z]+$/.test(range)
    ? range.replace(/([A-Z]+):([A-Z]+)/, "$11:$21048576")
    : range;
  const sqref = whole.replace(/^([A-Z]+\d+:[A-Z]+)$/, "$11048576");
  const said = help ? ` showInputMessage="1" prompt="${escaped(help.slice(0, 255))}"` : "";
  const refuses = refusesOthers ? ' showErrorMessage="1"' : "";
  return `<dataValidation type="list" allowBlank="1"${refuses}${said} sqref="${sqref}"><formula1>${escaped(list)}</formula1></dataValidation>`;
}
