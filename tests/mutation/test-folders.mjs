/** Test folders that are run for the faults of a source folder: its own, and what stands on it. */
const byFolder = {
  statistics: ["statistics", "published", "mirror-figures"],
  coaching: ["coaching", "published", "statistics", "mirror-figures", "catalogue"],
  rows: ["rows"],
};

export function testFolders(places) {
  return [...new Set(places.flatMap((place) => byFolder[place.split("/")[0]] ?? []))];
}
