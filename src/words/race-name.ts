/** A race without its place and distance: "R4" of "R4, county track, 10 km". */
export const raceName = (race: string | number | undefined): string => String(race).split(",")[0]!;
