import type { AvailabilitySpell } from "../../../src/coaching/record/availability-spell";

/** A spell of Joss Whitterby's in the Availability table from a day on, modified unless another is said. */
export function jossModified(
  from: number,
  over: Partial<AvailabilitySpell> = {},
): AvailabilitySpell {
  return {
    row: 2,
    athlete: "Joss Whitterby",
    from,
    until: null,
    mayDo: "modified",
    by: "N. Ferriter",
    site: "",
    pain: null,
    note: "",
    ...over,
  };
}
