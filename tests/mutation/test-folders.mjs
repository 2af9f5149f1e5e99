/** Test folders that are run for the faults of a source folder: its own, and what stands on it. */
const byFolder = {
  statistics: ["statistics", "published", "mirror-figures"],
  coaching: ["coaching", "published", "mirror-figures"],
  rows: ["rows"],
};

/** For one idea of coaching its own tests and the general ones: what other ideas notice is not counted. */
export function testFolders(places) {
  return [
    ...new Set(
      places.flatMap((place) => {
        const [top, idea] = place.split("/");
        const folders = byFolder[top] ?? [];
        return top === "coaching" && idea !== undefined
          ? folders.map((one) => (one === "coaching" ? `coaching/${idea}` : one))
          : folders;
      }),
    ),
  ];
}
