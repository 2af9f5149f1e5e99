import { readdirSync } from "node:fs";

/** Test folders that are run for the faults of a source folder: its own, and what stands on it. */
const byFolder = {
  statistics: ["statistics", "published", "mirror-figures"],
  coaching: ["coaching", "published", "mirror-figures", "statistics", "weeks"],
  rows: ["rows"],
};

/**
 * Test files, as paths under tests/, that are run for the faults of some source folders or files:
 * "coaching/hold", "rows/table/read-lines.ts".
 */
export function testsOf(places) {
  const folders = new Set(places.flatMap((place) => byFolder[place.split("/")[0]] ?? []));
  return [...folders].flatMap((folder) =>
    readdirSync(`tests/${folder}`, { recursive: true })
      .filter((path) => path.endsWith(".test.ts"))
      .map((path) => `${folder}/${path}`)
      .sort(),
  );
}
