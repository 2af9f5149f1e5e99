import { isoFromDay } from "../../coaching/calendar/day";
import type { AvailabilitySpell, MayDo } from "../../coaching/record/availability-spell";
import { choiceColumn, choices } from "../column/choice-column";
import { dayColumn, newDayAside } from "../column/day-column";
import { numberColumn } from "../column/number-column";
import { textColumn } from "../column/text-column";
import { plainWords } from "../header/header-words";
import type { Reading } from "../reading";
import type { TableView } from "../table-view";
import { DoubledRows } from "./doubled-rows";
import { reportBlank, reportDoubled } from "./needed";
import { readLines } from "./read-lines";

const mayDos = choices<MayDo>({
  full: "full|full training|fit|fully fit|all|ok|yes|voll|normal|available|fully available|present|healthy|anwesend|gesund",
  modified:
    "modified|mod|limited|light|eingeschränkt|restricted|part|partial|reduced|modified training|limited training",
  out: "out|off|no|ill|injured|sick|krank|verletzt|aus|rest|unavailable|unfit|not fit|no training|injury|illness|away|absent|holiday|on holiday|abwesend|urlaub|verreist|blessé|blessée|malade|lesionado|lesionada|enfermo|enferma|geblesseerd|ziek|skadad|sjuk",
  cleared: "cleared|clear|freigegeben|frei|released",
});

const led =
  /^(\p{L}+)(?:\s*[-–—,;:(./]+\s*|\s+(?=(?:until|till|til|bis|for|with|from|since|due|wegen|mit|ab|seit)(?!\p{L})))(\S.*)$/isu;

/** "Out until cleared", "limited - no jumps": a word that limits, and what is said after it; null for all else. */
function leadingWord(cell: unknown): { readonly mayDo: MayDo; readonly rest: string } | null {
  const text = typeof cell === "string" && cell.length < 200 ? cell.trim() : "";
  const [, word = "", rest = ""] = led.exec(text) ?? [];
  const mayDo = mayDos.get(plainWords(word)) ?? null;
  // "Full from Monday" is not full today, and "no: jumps" is no word of the athlete.
  const limits = mayDo === "modified" || (mayDo === "out" && plainWords(word) !== "no");
  return limits ? { mayDo, rest: rest.replace(/^([^(]*)\)/, "$1") } : null;
}

/** What words say an athlete may do; null when they say nothing known. */
export const mayDoOfWords = (words: string): MayDo | null =>
  mayDos.get(plainWords(words)) ?? leadingWord(words)?.mayDo ?? null;

/** Rows of the Availability table. A row that cannot be read is left out and reported: never "full". */
export function readAvailabilityRows(view: TableView): Reading<AvailabilitySpell> {
  const { fields, log } = view;
  const name = textColumn(view, fields.athlete, true);
  const span = { ...newDayAside(), last: null };
  const from = dayColumn(view, fields.from, true, span);
  const until = dayColumn(view, fields.until, false);
  const mayDo = choiceColumn(
    view,
    fields.mayDo,
    mayDos,
    "needed",
    (words) => leadingWord(words)?.mayDo ?? null,
  );
  const by = textColumn(view, fields.by);
  const site = textColumn(view, fields.site);
  const pain = numberColumn(view, fields.pain, { low: 0, high: 10 });
  const note = textColumn(view, fields.note);
  const doubled = new DoubledRows(view);

  return readLines<AvailabilitySpell>(
    view,
    (line, row) => {
      const athlete = name(line, row);
      if (athlete === "") return reportBlank(view, fields.athlete, row);
      const first = from(line, row);
      if (first === null) return null;
      const allowed = mayDo(line, row);
      if (allowed === null) return null;
      const lastOfSpan = span.last;
      const last = until(line, row) ?? lastOfSpan;
      if (last !== null && last < first && fields.until !== undefined) {
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
        note: [leadingWord(line[fields.mayDo!.index])?.rest ?? "", note(line, row)]
          .filter((one) => one !== "")
          .join("; "),
      };
    },
    [from, until, mayDo, by, site, pain, note],
  );
}
