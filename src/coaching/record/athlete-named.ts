import { nameKey } from "./name-key";

/** The row that is of an athlete, under whichever spelling `nameKey` takes for the same name; undefined without one. */
export function athleteNamed<Row extends { readonly athlete: string }>(
  rows: readonly Row[],
  name: string,
): Row | undefined {
  const key = nameKey(name);
  return rows.find(({ athlete }) => nameKey(athlete) === key);
}
