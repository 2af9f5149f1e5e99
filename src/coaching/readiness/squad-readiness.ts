import { type LineSettings, usualLineSettings } from "../bar-speed/line-settings";
import type { Day } from "../calendar/day";
import type { Plate } from "../record/plate";
import type { SquadIndex } from "../series/squad-index";
import { diaryItems } from "./diary-items";
import { diaryPart } from "./diary-part";
import { jumpPart } from "./jump-part";
import type { Readiness } from "./readiness";
import { type ReadinessSettings, usualReadinessSettings } from "./readiness-settings";
import { speedPart } from "./speed-part";
import { squadSpreads } from "./squad-spreads";
import { wordOfDay } from "./word-of-day";

/**
 * Any day of any athlete against usual; the day left out is the index's last day. Never refuses: a
 * day with nothing to compare is `too few rows`. What the squad's rows say about ordinary spread is
 * read as of the index's last day, once.
 */
export function squadReadiness({
  index,
  plates,
  settings = usualReadinessSettings,
  lineSettings = usualLineSettings,
}: {
  readonly index: SquadIndex;
  readonly plates: readonly Plate[];
  readonly settings?: ReadinessSettings;
  readonly lineSettings?: LineSettings;
}): (athlete: string, day?: Day) => Readiness {
  const squad = squadSpreads(index, plates, settings, lineSettings);
  return (name, day = index.asOf) => {
    const rows = index.of(name);
    const found = rows
      ? [
          speedPart(rows, day, squad, settings),
          jumpPart(rows, day, plates, squad, settings),
          ...diaryItems.map((item) => diaryPart(rows, day, item, squad, settings)),
        ]
      : [];
    const parts = found.flatMap((one) => (one && "part" in one ? one.part : []));
    const scores = new Map(parts.map(({ part, z }) => [part, z]));
    const items = Object.fromEntries(diaryItems.map((item) => [item, scores.get(item) ?? null]));
    const judged = wordOfDay(
      { speed: scores.get("speed") ?? null, jump: scores.get("jump") ?? null, items },
      { ...settings, ...squad.ties() },
    );
    return {
      athlete: rows?.athlete ?? name,
      day,
      word: judged.word,
      size: judged.size,
      reason: parts.find(({ part }) => part === judged.reason) ?? null,
      parts,
      needed: found.flatMap((one) => (one && "gap" in one ? one.gap : [])),
    };
  };
}
