/** Test folders that are run for the faults of a source folder: its own, and what stands on it. */
const byFolder = {
  statistics: ["statistics", "published", "mirror-figures"],
  coaching: ["coaching", "published", "mirror-figures", "statistics"],
  rows: ["rows"],
};

/** What all ideas of coaching stand on: the tests of all of them try it. */
const common = new Set(["calendar", "record", "series", "units"]);

/**
 * For one idea of coaching its own tests and the general ones: what other ideas notice is not counted.
 *
 * @returns test files without their ending, as patterns under tests/
 */
export function testsOf(places) {
  const patterns = places.flatMap((place) => {
    const [top, idea] = place.split("/");
    const folders = byFolder[top] ?? [];
    const own = top === "coaching" && idea !== undefined && !common.has(idea);
    return folders.flatMap((one) =>
      own && one === "coaching" ? [`coaching/${idea}/**/*`, "coaching/*"] : [`${one}/**/*`],
    );
  });
  return [...new Set(patterns)];
}
