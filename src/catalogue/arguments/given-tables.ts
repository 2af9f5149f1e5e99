import type { Day } from "../../coaching/calendar/day";
import { nameKey } from "../../coaching/record/name-key";
import type { SquadRules } from "../../coaching/record/squad-rules";
import { squadRules } from "../../rows/table/read-rules";
import type { RowOf } from "../../rows/table/read-view";
import type { TableName } from "../../rows/table-name";
import { optionalTable, type TableArgument, tableArgument } from "./table-argument";
import { thrown } from "./thrown";
import { droppedRowsOf, type UnusedRows, unusedRows } from "./unused-rows";

/** The tables a squad's formula was given, read. */
export type GivenTables = {
  /** Rows of one table; none when it was left out. */
  readonly rows: <T extends TableName>(table: T) => readonly RowOf[T][];
  readonly rules: SquadRules;
  readonly unused: UnusedRows;
  /** False when the table was left out. */
  readonly has: (table: TableName) => boolean;
  /** Rows of a table that name an athlete and could not be read. */
  readonly dropped: (table: TableName, athlete: string) => number;
  /** Names in the rows up to a day, as first written, by `nameKey`. */
  readonly namesUpTo: (day: Day) => ReadonlyMap<string, string>;
  /** "Sets or Jumps": the tables athletes were looked for in. */
  readonly lookedIn: string;
};

const argumentOf: Readonly<Record<TableName, string>> = {
  Athletes: "athletes",
  Availability: "availability",
  Sets: "sets",
  Jumps: "jumps",
  Diary: "diary",
  Runs: "runs",
  Races: "races",
  Plates: "plates",
  Rules: "rules",
};
const withAthletes = ["Sets", "Jumps", "Diary", "Runs"] as const;

/**
 * Reads a formula's tables by name. Those in `needed` must be given, others may be left out.
 * Dates without a year are read as of `asOf`. Throws the sentence of what spoils an argument.
 */
export function givenTables(
  cells: Readonly<Partial<Record<TableName, unknown>>>,
  needed: readonly TableName[],
  asOf?: Day,
): GivenTables {
  const given = (Object.keys(cells) as TableName[]).map((table) =>
    thrown(
      (needed.includes(table) ? tableArgument : optionalTable)(
        table,
        argumentOf[table],
        cells[table],
        asOf,
      ),
    ),
  );
  const rows = <T extends TableName>(table: T): readonly RowOf[T][] =>
    (given.find((one) => one.table === table)?.reading.records ?? []) as readonly RowOf[T][];
  return {
    rows,
    rules: squadRules(rows("Rules")),
    unused: unusedRows(given as readonly TableArgument<TableName>[]),
    has: (table) => given.some((one) => one.table === table && one.cells.length > 0),
    dropped: (table, athlete) => {
      const one = given.find((argument) => argument.table === table);
      return one ? droppedRowsOf(one as TableArgument<TableName>, athlete) : 0;
    },
    namesUpTo: (day) => {
      const names = new Map<string, string>();
      const spellings = new Set<string>();
      for (const table of withAthletes) {
        const read = rows(table);
        let last = "";
        for (let at = 0; at < read.length; at++) {
          const { day: written, athlete } = read[at]!;
          if (written > day || athlete === last || spellings.has(athlete)) continue;
          last = athlete;
          spellings.add(athlete);
          const key = nameKey(athlete);
          if (key !== "" && !names.has(key)) names.set(key, athlete);
        }
      }
      return names;
    },
    lookedIn: withAthletes.filter((table) => table in cells).join(" or "),
  };
}
