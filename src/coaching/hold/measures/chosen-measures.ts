import type { Day } from "../../calendar/day";
import { type TestDay, testDays } from "../../jumps/test-day";
import type { Plate } from "../../record/plate";
import { remembered } from "../../series/remembered";
import { addDays } from "../../series/season-start";
import type { AthleteRows, SquadIndex } from "../../series/squad-index";
import type { MeasureKind } from "../season-hold";
import type { SeasonDays } from "./season-measure";

/** Which lift and tests speak for an athlete's season. */
export type ChosenMeasures = {
  readonly lift: string | null;
  readonly height: string | null;
  readonly third: {
    readonly test: string;
    readonly kind: MeasureKind & ("reactive strength" | "contact time");
  } | null;
};

/** The squad's lifts and tests, those with most athlete-days in the season first. */
export type SquadMeasures = {
  readonly testDaysOf: (athlete: AthleteRows, test: string) => readonly TestDay[];
  readonly choose: (athlete: AthleteRows, days: SeasonDays) => ChosenMeasures;
};

const leastBaselineDays = 3;

/**
 * A season is followed by one lift, one height and one drop jump, the same for the whole squad where
 * rows allow: for each athlete the squad's most frequent one that this athlete has on at least three
 * baseline days, failing that the most frequent one the athlete has at all.
 */
export function squadMeasures(
  index: SquadIndex,
  seasonStart: Day,
  plates: readonly Plate[],
): SquadMeasures {
  const known = new Map<AthleteRows, Map<string, readonly TestDay[]>>();
  for (const athlete of index.athletes.values()) {
    const tests = [...athlete.jumps].map(
      ([test, attempts]) => [test, testDays(attempts, plates)] as const,
    );
    known.set(athlete, new Map(tests));
  }
  const testDaysOf = (athlete: AthleteRows, test: string) => known.get(athlete)?.get(test) ?? [];

  const liftDays = daysOnce((athlete, lift) =>
    (athlete.lifts.get(lift) ?? []).filter(({ loadKg }) => loadKg !== null),
  );
  const heightDays = daysOnce((athlete, test) =>
    testDaysOf(athlete, test).filter(({ heightCm }) => heightCm !== null),
  );
  const contactDays = daysOnce((athlete, test) =>
    testDaysOf(athlete, test).filter(({ contactS }) => contactS !== null),
  );

  const squad = [...index.athletes.values()];
  const ranked = (
    namesOf: (athlete: AthleteRows) => Iterable<string>,
    daysOf: DaysOf,
  ): readonly string[] => {
    const counts = new Map<string, number>();
    for (const athlete of squad) {
      for (const name of namesOf(athlete)) {
        const days = daysOf(athlete, name).filter((day) => day >= seasonStart).length;
        counts.set(name, (counts.get(name) ?? 0) + days);
      }
    }
    return [...counts]
      .filter(([, count]) => count > 0)
      .sort(([a, x], [b, y]) => y - x || (a < b ? -1 : 1))
      .map(([name]) => name);
  };
  const tests = (athlete: AthleteRows) => athlete.jumps.keys();
  const lifts = ranked((athlete) => athlete.lifts.keys(), liftDays);
  const contacts = ranked(tests, contactDays);
  const heights = ranked(tests, heightDays);

  return {
    testDaysOf,
    choose: (athlete, days) => {
      const pick = (names: readonly string[], daysOf: DaysOf) => {
        const season = (name: string) => daysOf(athlete, name).filter((day) => day >= days.from);
        const steady = names.find(
          (name) =>
            season(name).filter((day) => day <= days.baselineTo).length >= leastBaselineDays,
        );
        return steady ?? names.find((name) => season(name).length > 0) ?? null;
      };
      const contact = pick(contacts, contactDays);
      const reactive =
        contact !== null &&
        testDaysOf(athlete, contact).filter(
          ({ day, reactiveStrength }) =>
            day >= days.from && day <= days.baselineTo && reactiveStrength !== null,
        ).length >= leastBaselineDays;
      return {
        lift: pick(lifts, liftDays),
        // A drop jump's height is part of its reactive strength already.
        height: pick(
          heights.filter((test) => test !== contact),
          heightDays,
        ),
        third:
          contact === null
            ? null
            : { test: contact, kind: reactive ? "reactive strength" : "contact time" },
      };
    },
  };
}

/** The different days an athlete has a lift or test on, in order. */
type DaysOf = (athlete: AthleteRows, name: string) => readonly Day[];

/** Days of rows in order of day, worked out when first asked for. */
function daysOnce(
  rowsOf: (athlete: AthleteRows, name: string) => readonly { readonly day: Day }[],
): DaysOf {
  const daysOf = remembered((athlete: AthleteRows) =>
    remembered((name: string) => differentDays(rowsOf(athlete, name))),
  );
  return (athlete, name) => daysOf(athlete)(name);
}

function differentDays(rows: readonly { readonly day: Day }[]): readonly Day[] {
  const days = new Set<Day>();
  addDays(rows, days);
  return [...days];
}
