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
};

/** One athlete's sets, in the order they were lifted. */
export type AthleteSets = {
  readonly athlete: string;
  readonly sets: readonly WarehouseSet[] | null;
};

const before = ["date", "athlete", "exercise", "set", "kind", "load kg", "mean speed m/s", "tool"];

/** A squad's sets as the Sets table of a spreadsheet, so that nothing reads them otherwise than there. */
export function setCells(squad: readonly AthleteSets[]): readonly (readonly unknown[])[] {
  let reps = 1;
  for (const { sets } of squad)
    for (const { rep_speeds } of sets ?? []) reps = Math.max(reps, rep_speeds?.length ?? 0);
  const heading = [...before, ...Array.from({ length: reps }, (_, rep) => `rep ${rep + 1}`)];
  const rows = squad.flatMap(({ athlete, sets }) =>
    (sets ?? []).map((set) => [
      set.day,
      athlete,
      set.exercise,
      set.set_number ?? "",
      set.kind ?? "",
      set.load_kg ?? "",
      set.mean_speed ?? "",
      set.tool ?? "",
      ...Array.from({ length: reps }, (_, rep) => set.rep_speeds?.[rep] ?? ""),
    ]),
  );
  return [heading, ...rows];
}
