import type { TableName } from "../../table-name";
import { athletesColumns } from "./athletes";
import { availabilityColumns } from "./availability";
import { diaryColumns } from "./diary";
import { jumpsColumns } from "./jumps";
import { platesColumns } from "./plates";
import { racesColumns } from "./races";
import { rulesColumns } from "./rules";
import { runsColumns } from "./runs";
import { setsColumns } from "./sets";

/** Every heading the add-on knows, by table and meaning. */
export const tableColumns = {
  Athletes: athletesColumns,
  Availability: availabilityColumns,
  Sets: setsColumns,
  Jumps: jumpsColumns,
  Diary: diaryColumns,
  Runs: runsColumns,
  Races: racesColumns,
  Plates: platesColumns,
  Rules: rulesColumns,
} as const satisfies Record<TableName, Record<string, readonly string[]>>;

export type FieldOf<Table extends TableName> = keyof (typeof tableColumns)[Table] & string;

/** Meanings without which a row of the table says nothing. */
export const neededFields: { readonly [Table in TableName]: readonly FieldOf<Table>[] } = {
  Athletes: ["athlete"],
  Availability: ["athlete", "from", "mayDo"],
  Sets: ["day", "athlete", "exercise", "load"],
  Jumps: ["day", "athlete", "test"],
  Diary: ["day", "athlete"],
  Runs: ["day", "athlete"],
  Races: ["day", "race"],
  Plates: ["mass", "thickness"],
  Rules: ["rule", "value"],
};
