/** Rows of a squad laid out as a spreadsheet's table, and where each came from. */
export type WarehouseTable = {
  readonly table: "Sets" | "Jumps";
  readonly cells: readonly (readonly unknown[])[];
  /** The warehouse's name of each column of the cells. */
  readonly columns: readonly string[];
  /** Athlete, day and place among the athlete's rows of each row of the cells, the heading's left out. */
  readonly origins: readonly {
    readonly athlete: string;
    readonly day: string;
    readonly place: number;
  }[];
};

/** A column of the warehouse and its heading in the spreadsheet. */
export type ColumnPair = readonly [column: string, heading: string];

/** Lays one athlete's rows after another's. */
export function warehouseTable<Row extends { readonly day: string }>(
  table: WarehouseTable["table"],
  pairs: readonly ColumnPair[],
  squad: readonly { readonly athlete: string; readonly rows: readonly Row[] | null }[],
  cellsOf: (athlete: string, row: Row) => readonly unknown[],
): WarehouseTable {
  const all = squad.flatMap(({ athlete, rows }) =>
    (rows ?? []).map((row, at) => ({ athlete, row, place: at + 1 })),
  );
  return {
    table,
    columns: pairs.map(([column]) => column),
    cells: [
      pairs.map(([, heading]) => heading),
      ...all.map(({ athlete, row }) => cellsOf(athlete, row).map((cell) => cell ?? "")),
    ],
    origins: all.map(({ athlete, row, place }) => ({ athlete, day: row.day, place })),
  };
}
