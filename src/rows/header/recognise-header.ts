import { orderFromWords } from "../layout/shorthand/scheme-order";
import type { TableName } from "../table-name";
import { type Unit, unitOf } from "../value/units";
import type { Column } from "./column";
import { tableColumns } from "./columns";
import { headerWords } from "./header-words";
import { withoutRemarks } from "./heading-remarks";

export type RecognisedHeader = {
  readonly fields: Readonly<Record<string, Column>>;
  readonly repColumns: readonly Column[];
  /** Columns with a heading that no table word fits, by index from 0. */
  readonly unknown: readonly number[];
};

const numbered = /^(?:rep|r|wdh|wiederholung|rep speed|speed|speed rep|v|m\/s) ?#?(\d{1,2})$/;
const lookups = new Map<TableName, ReadonlyMap<string, string>>();

/** Meaning of every heading word of one table. */
export function headingLookup(table: TableName): ReadonlyMap<string, string> {
  const known = lookups.get(table);
  if (known !== undefined) return known;
  const lookup = new Map<string, string>();
  for (const [field, words] of Object.entries<readonly string[]>(tableColumns[table]))
    for (const word of words)
      for (const key of [word, headerWords(word).words])
        if (!lookup.has(key)) lookup.set(key, field);
  lookups.set(table, lookup);
  return lookup;
}

/** Reads one row as the header of a table, by words alone; the first of two equal headings counts. */
export function recogniseHeader(table: TableName, row: readonly unknown[]): RecognisedHeader {
  const lookup = headingLookup(table);
  const fields: Record<string, Column> = {};
  const reps: { number: number; column: Column }[] = [];
  const unknown: number[] = [];
  for (let index = 0; index < row.length; index++) {
    const cell = bareHeading(table, row[index]);
    const { words, unit } = headerWords(cell);
    if (words === "" && unit === null) continue;
    const column: Column = { index, unit, heading: String(row[index]).trim(), words };
    const rep = table === "Sets" ? numbered.exec(words) : null;
    const spelled = table === "Sets" && orderFromWords(cell) !== null ? "scheme" : undefined;
    const field = spelled ?? namedBy(lookup, words, unit);
    // Where both stand, "Day" is the weekday and "Date" the day.
    const dated =
      field === "day" && /^dat/.test(words) && /^(?:day|tag)$/.test(fields.day?.words ?? "");
    if (dated) {
      unknown.push(fields.day!.index);
      fields.day = column;
    } else if (rep !== null) reps.push({ number: Number(rep[1]), column });
    else if (field !== undefined && fields[field] === undefined) fields[field] = column;
    else unknown.push(index);
  }
  reps.sort((a, b) => a.number - b.number);
  return { fields, repColumns: reps.map((rep) => rep.column), unknown };
}

/** A heading without what its brackets ask or explain, where the table knows it then; as it is otherwise. */
export const bareHeading = (table: TableName, heading: unknown): unknown =>
  withoutRemarks(heading, (bare) => {
    const { words, unit } = headerWords(bare);
    return namedBy(headingLookup(table), words, unit);
  }) ?? heading;

const namedBy = (lookup: ReadonlyMap<string, string>, words: string, unit: Unit | null) =>
  meaningOf(lookup, words) ?? (namesUnit(words, unit) ? lookup.get(unit.name) : undefined);

/** A unit alone ("Kilos", "m·s⁻¹"), or "Best m/s": of speeds alone the word beside it leaves no other meaning. */
function namesUnit(words: string, unit: Unit | null): unit is Unit {
  if (unit === null) return false;
  return (
    words === "" ||
    unitOf(words) === unit ||
    (unit.quantity === "speed" &&
      /^(?:mean|avg|average|ø|peak|best|fastest|top|bar|mittel|beste|v)$/.test(words))
  );
}

const beside =
  /^(?:mean|avg|average|peak|best|fastest|top|bar|first|total)\s+|^(?:session|test|testing|training|workout|lift|run|race|event)s? (?=date$)|(?<=^date) of (?:the )?(?:session|test|training|workout|run|race|event)$|\s+(?:per|each|je|pro|of each)\s+(?:set|rep|satz|wdh)s?$/;

/** The ends of a scale beside what is rated: "soreness 1-5", "mood out of 10". */
const scale = /\s+(?:\d{1,2}\s*(?:[-–]|to|bis)|out of|von)\s*\d{1,3}$/;
const rated = /^(?:soreness|fatigue|stress|mood|sleepQuality|exertion|effort)$/;

/** A heading's meaning, also with "mean", "peak", "per set" around it, or "session" beside "date". */
function meaningOf(lookup: ReadonlyMap<string, string>, words: string): string | undefined {
  for (let left = words; ; ) {
    const field = lookup.get(left);
    if (field !== undefined) return field;
    const bare = left.replace(beside, "");
    if (bare === left) {
      const field = lookup.get(left.replace(scale, ""));
      return field !== undefined && rated.test(field) ? field : undefined;
    }
    left = bare;
  }
}
