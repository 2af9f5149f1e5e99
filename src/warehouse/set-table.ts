import { type ColumnPair, type WarehouseTable, warehouseTable } from "./warehouse-table";

/** One set as the warehouse keeps it; a figure not recorded is null or left out. */
export type WarehouseSet = {
  /** "2026-05-12". */
  readonly day: string;
  readonly exercise: string;
  readonly set_number?: number | null;
  readonly kind?: string | null;
  readonly load_kg?: number | null;
  /** m/s, one a repetition in order. */
  readonly rep_speeds?: readonly (number | null)[] | null;
  /** m/s, where single repetitions were not kept. */
  readonly mean_speed?: number | null;
  readonly tool?: string | null;
  /** "mean" or "peak". */
  readonly speed_is?: string | null;
  /** Mass of the empty bar. */
  readonly bar_kg?: number | null;
  readonly gym?: string | null;
};

/** One athlete's sets, in the order they were lifted. */
export type AthleteSets = {
  readonly athlete: string;
  readonly sets: readonly WarehouseSet[] | null;
};

const before: readonly ColumnPair[] = [
  ["day", "date"],
  ["athlete", "athlete"],
  ["exercise", "exercise"],
  ["set_number", "set"],
  ["kind", "kind"],
  ["load_kg", "load kg"],
  ["mean_speed", "mean speed m/s"],
  ["tool", "tool"],
  ["speed_is", "speed is"],
  ["bar_kg", "bar mass kg"],
  ["gym", "gym"],
];

/** A squad's sets as the Sets table of a spreadsheet, so that nothing reads them otherwise than there. */
export function setTable(squad: readonly AthleteSets[]): WarehouseTable {
  let reps = 1;
  for (const { sets } of squad)
    for (const { rep_speeds } of sets ?? []) reps = Math.max(reps, rep_speeds?.length ?? 0);
  const places = Array.from({ length: reps }, (_, rep) => rep);
  const pairs = [...before, ...places.map((rep): ColumnPair => ["rep_speeds", `rep ${rep + 1}`])];
  return warehouseTable(
    "Sets",
    pairs,
    squad.map(({ athlete, sets }) => ({ athlete, rows: sets })),
    (athlete, set) => [
      set.day,
      athlete,
      set.exercise,
      set.set_number,
      set.kind,
      set.load_kg,
      set.mean_speed,
      set.tool,
      set.speed_is,
      set.bar_kg,
      set.gym,
      ...places.map((rep) => set.rep_speeds?.[rep]),
    ],
  );
}
