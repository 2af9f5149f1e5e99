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
 */
export function testFolders(places) {
  return [
    ...new Set(
      places.flatMap((place) => {
        const [top, idea] = place.split("/");
        const folders = byFolder[top] ?? [];
        return top === "coaching" && idea !== undefined && existsSync(`tests/coaching/${idea}`)
          ? folders.map((one) => (one === "coaching" ? `coaching/${idea}` : one))
          : folders;
      }),
    ),
  ];
}
