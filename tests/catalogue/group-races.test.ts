import { groupRaces } from "../../src/catalogue/arguments/group-races";
import { athlete, race } from "../coaching/next-week/written-squad";

const races = [race("2026-06-13", 10, { who: "track; road" }), race("2026-06-20", 10)];
const of = (group: string | null) =>
  groupRaces(
    [
      {
        athlete: "Ilka Brandmoor",
        record: group === null ? null : athlete("Ilka Brandmoor", { group }),
      },
    ],
    races,
  );

test("groups that races name are told where no group of an athlete asked about is known", () => {
  expect(of(null)).toEqual(["track", "road"]);
  expect(of("")).toEqual(["track", "road"]);
  expect(of("track")).toEqual([]);
});
