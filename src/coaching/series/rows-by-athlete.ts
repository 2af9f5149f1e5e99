import { nameKey } from "../record/name-key";
import type { SquadRows } from "../record/squad-rows";
import { grouped } from "./grouped";
import { remembered } from "./remembered";

/**
 * A squad's rows laid out by athlete once, so that each athlete's week is proposed from that athlete's
 * rows alone, by any spelling of the name. Races, plates, rules and the Athletes table are everybody's.
 */
export function rowsByAthlete(rows: SquadRows): (name: string) => SquadRows {
  // Names repeat thousands of times: each spelling is keyed once.
  const keyOf = remembered(nameKey);
  const byName = <Row extends { readonly athlete: string }>(of: readonly Row[]) => {
    const groups = grouped(of, ({ athlete }) => keyOf(athlete));
    return (key: string): readonly Row[] => groups.get(key) ?? [];
  };
  const sets = byName(rows.sets);
  const jumps = byName(rows.jumps);
  const diary = byName(rows.diary);
  const runs = byName(rows.runs);
  const availability = byName(rows.availability);
  return (name) => {
    const key = keyOf(name);
    return {
      ...rows,
      sets: sets(key),
      jumps: jumps(key),
      diary: diary(key),
      runs: runs(key),
      availability: availability(key),
    };
  };
}
