import type { Day } from "../calendar/day";
import type { Plate } from "../record/plate";
import type { SquadIndex } from "../series/squad-index";
import type { Readiness } from "./readiness";

/** Any day of any athlete against usual; the day left out is the index's last day. Never refuses. */
export function squadReadiness(_given: {
  readonly index: SquadIndex;
  readonly plates: readonly Plate[];
}): (athlete: string, day?: Day) => Readiness {
  throw new Error("being written");
}
