import type { SquadRules } from "../record/squad-rules";
import type { HoldNote, MissingRows } from "./season-hold";
import type { AthleteSeason } from "./squad-seasons";
import type { WatchedSeason } from "./watched-season";

/** Sessions after the baseline before a word is given. */
const leastAfter = 2;

/** How many more sessions each measure needs before a word can be given. */
export function missingRows(
  season: AthleteSeason,
  watched: WatchedSeason,
  rules: SquadRules,
): readonly MissingRows[] {
  const { sessions, baselineSessions, measures, values, window } = season;
  const baselineOpen = window.own ? 0 : Math.max(0, rules.baselineSessions - baselineSessions);
  return measures.map(({ kind, of }, m) => {
    const followed = watched.measures.find(({ place }) => place === m);
    const after = sessions.length - (followed?.baselineSessions ?? baselineSessions);
    const wait = baselineOpen + Math.max(0, leastAfter - after);
    const inBaseline = values[m]!.slice(0, baselineSessions).filter((v) => !Number.isNaN(v)).length;
    const short = followed ? 0 : watched.settings.leastBaselineRows - inBaseline;
    return { kind, of, rows: Math.max(wait, short, 1) };
  });
}

/** What the rows themselves make a reader wonder about. */
export function rowNotes(
  season: AthleteSeason,
  watched: WatchedSeason,
  rules: SquadRules,
): readonly HoldNote[] {
  const notes: HoldNote[] = [];
  const { sessions, baselineSessions, measures, window } = season;
  for (const [m, { kind, of, percents }] of measures.entries()) {
    const followed = watched.measures.find(({ place }) => place === m);
    if (followed && followed.baselineSessions > baselineSessions) {
      const to = sessions[followed.baselineSessions - 1]!;
      notes.push({ code: "baseline-stretched", facts: { kind, of, to } });
    }
    if (followed || sessions.length <= baselineSessions) continue;
    const rows = watched.settings.leastBaselineRows - percents.size;
    // So long all its readings lie in the longest baseline, and are too few.
    const open = sessions.length < watched.settings.longestBaseline * baselineSessions;
    notes.push(
      open
        ? { code: "measure-needs-rows", facts: { kind, of, rows } }
        : { code: "measure-not-followed", facts: { kind, of } },
    );
  }
  if (window.own && baselineSessions < 4 && sessions.length > baselineSessions) {
    notes.push({ code: "baseline-short", facts: { sessions: baselineSessions } });
  }
  for (const { place, errors } of watched.measures) {
    const { stepPercent, of } = measures[place]!;
    // Said only of a step that a reader could take for wobble.
    if (stepPercent > errors[watched.sessions - 1]!) {
      notes.push({ code: "read-in-steps", facts: { of, percent: stepPercent } });
    }
  }
  // Without sessions no number, which is past no limit.
  const weeks = (sessions[sessions.length - 1]! - sessions[0]!) / 7;
  if (weeks > 2 * rules.seasonWeeks) {
    notes.push({ code: "long-season", facts: { weeks: Math.round(weeks) } });
  }
  return notes;
}
