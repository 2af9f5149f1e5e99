import { isoFromDay } from "../../coaching/calendar/day";
import type { AvailabilitySpell, MayDo } from "../../coaching/record/availability-spell";
import { choiceColumn, choices } from "../column/choice-column";
import { dayColumn } from "../column/day-column";
import { numberColumn } from "../column/number-column";
import { textColumn } from "../column/text-column";
import type { Reading } from "../reading";
import type { TableView } from "../table-view";
import { DoubledRows } from "./doubled-rows";
import { reportBlank, reportDoubled } from "./needed";
import { readLines } from "./read-lines";

const mayDos = choices<MayDo>({
  full: "full|full training|fit|fully fit|all|ok|yes|voll|normal|available|fully available",
  modified:
    "modified|mod|limited|light|eingeschränkt|restricted|part|partial|reduced|modified training|limited training",
  out: "out|off|no|ill|injured|sick|krank|verletzt|aus|rest|unavailable|unfit|not fit|no training|injury|illness",
  cleared: "cleared|clear|freigegeben|frei|released",
});

/** Rows of the Availability table. A row that cannot be read is left out and reported: never "full". */
export function readAvailabilityRows(view: TableView): Reading<AvailabilitySpell> {
  const { fields, log } = view;
  const name = textColumn(view, fields.athlete, true);
  const from = dayColumn(view, fields.from, true);
  const until = dayColumn(view, fields.until, false);
  const mayDo = choiceColumn(view, fields.mayDo, mayDos, "needed");
  const by = textColumn(view, fields.by);
  const site = textColumn(view, fields.site);
  const pain = numberColumn(view, fields.pain, { low: 0, high: 10 });
  const note = textColumn(view, fields.note);
  const doubled = new DoubledRows(view);

  return readLines<AvailabilitySpell>(view, (line, row) => {
    const athlete = name(line, row);
    if (athlete === "") return reportBlank(view, fields.athlete, row);
    const first = from(line, row);
    if (first === null) return null;
    const allowed = mayDo(line, row);
    if (allowed === null) return null;
    const last = until(line, row);
    if (last !== null && last < first) {
      log.add(
        "ends-before-start",
        row,
        fields.until!.index,
        line[fields.until!.index],
        { from: isoFromDay(first), until: isoFromDay(last) },
        true,
      );
      return null;
    }
    const earlier = doubled.earlier(line, row);
    if (earlier >= 0) return reportDoubled(view, row, earlier);
    return {
      row: row + 1,
      athlete,
      from: first,
      until: last,
      mayDo: allowed,
      by: by(line, row),
      site: site(line, row),
      pain: pain(line, row),
      note: note(line, row),
    };
  });
}
