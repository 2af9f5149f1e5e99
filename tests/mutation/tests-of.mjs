import { existsSync } from "node:fs";

/** Test folders that are run for the faults of a source folder: its own, and what stands on it. */
const byFolder = {
  statistics: ["statistics", "published", "mirror-figures"],
  coaching: ["coaching", "published", "mirror-figures"],
  rows: ["rows"],
};

/**
 * For one idea of coaching its own tests and the general ones: what other ideas notice is not counted.
 * What all ideas stand on, such as a row's names, has no tests of its own: those of all ideas try it.
 *
 * @returns test files without their ending, as patterns under tests/
 */
export function testsOf(places) {
  const patterns = places.flatMap((place) => {
    const [top, idea] = place.split("/");
    const folders = byFolder[top] ?? [];
    const own = top === "coaching" && idea !== undefined && existsSync(`tests/coaching/${idea}`);
    return folders.flatMap((one) =>
      own && one === "coaching" ? [`coaching/${idea}/**/*`, "coaching/*"] : [`${one}/**/*`],
    );
  });
  return [...new Set(patterns)];
}
