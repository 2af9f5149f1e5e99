/** One jump as the warehouse keeps it; a figure not recorded is null or left out. */
export type WarehouseJump = {
  /** "2026-05-12". */
  readonly day: string;
  /** The test, as the Jumps table writes it. */
  readonly test: string;
  readonly height_cm?: number | null;
  readonly flight_s?: number | null;
  readonly contact_s?: number | null;
  readonly landing_cm?: number | null;
};

/** One athlete's jumps, in the order they were done. */
export type AthleteJumps = {
  readonly athlete: string;
  readonly jumps: readonly WarehouseJump[] | null;
};

const heading = [
  "date",
  "athlete",
  "test",
  "height cm",
  "flight time s",
  "contact time s",
  "landing height cm",
];

/** A squad's jumps as the Jumps table of a spreadsheet, so that nothing reads them otherwise than there. */
export function jumpCells(squad: readonly AthleteJumps[]): readonly (readonly unknown[])[] {
  const rows = squad.flatMap(({ athlete, jumps }) =>
    (jumps ?? []).map((jump) => [
      jump.day,
      athlete,
      jump.test,
      jump.height_cm ?? "",
      jump.flight_s ?? "",
      jump.contact_s ?? "",
      jump.landing_cm ?? "",
    ]),
  );
  return [heading, ...rows];
}
