import { type ColumnPair, type WarehouseTable, warehouseTable } from "./warehouse-table";

/** One jump as the warehouse keeps it; a figure not recorded is null or left out. */
export type WarehouseJump = {
  /** "2026-05-12". */
  readonly day: string;
  /** The test, as the Jumps table writes it. */
  readonly test: string;
  /** Of a stack of plates its height. */
  readonly height_cm?: number | null;
  readonly flight_s?: number | null;
  readonly contact_s?: number | null;
  readonly landing_cm?: number | null;
  /** Whether a stack or box was cleared; null of a jump that was measured. */
  readonly cleared?: boolean | null;
  readonly drop_cm?: number | null;
};

/** One athlete's jumps, in the order they were done. */
export type AthleteJumps = {
  readonly athlete: string;
  readonly jumps: readonly WarehouseJump[] | null;
};

const pairs: readonly ColumnPair[] = [
  ["day", "date"],
  ["athlete", "athlete"],
  ["test", "test"],
  ["height_cm", "height cm"],
  ["flight_s", "flight time s"],
  ["contact_s", "contact time s"],
  ["landing_cm", "landing height cm"],
  ["cleared", "cleared?"],
  ["drop_cm", "drop height cm"],
];

/** A squad's jumps as the Jumps table of a spreadsheet, so that nothing reads them otherwise than there. */
export function jumpTable(squad: readonly AthleteJumps[]): WarehouseTable {
  return warehouseTable(
    "Jumps",
    pairs,
    squad.map(({ athlete, jumps }) => ({ athlete, rows: jumps })),
    (athlete, jump) => [
      jump.day,
      athlete,
      jump.test,
      jump.height_cm,
      jump.flight_s,
      jump.contact_s,
      jump.landing_cm,
      jump.cleared,
      jump.drop_cm,
    ],
  );
}
