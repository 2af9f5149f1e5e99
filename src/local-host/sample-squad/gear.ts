import type { Member } from "./club";
import { dayOf } from "./season-days";

/** The international pound, kg (exact). */
export const kgOfPound = 0.45359237;

/** What a set was lifted and read with. */
export type Gear = {
  readonly tool: string;
  readonly gym: string;
  readonly bar: string | number;
  readonly inPounds: boolean;
  /** What the tool reads above the old one, m/s. */
  readonly readsMore: number;
};

/** Thursdays on which Nils lifts at home, with American plates. */
const homeDays = new Set(["2026-04-16", "2026-05-07", "2026-05-28", "2026-06-11"].map(dayOf));

export function gearOf({ athlete, experience }: Member, day: number): Gear {
  const nils = athlete === "Nils Quarrington";
  const home = nils && homeDays.has(day);
  const newTool = nils && day >= dayOf("2026-06-02");
  return {
    tool: newTool ? "bar tool B" : "bar tool A",
    gym: home ? "home" : "Quillbeck gym",
    bar: home ? "45 lb" : experience === "novice" ? 15 : 20,
    inPounds: home,
    readsMore: newTool ? 0.04 : 0,
  };
}
