import type { AthleteSeason } from "./squad-seasons";

/** Fewest sessions after the baseline that the limit was calibrated for. */
const fewest = 8;

/**
 * Sessions planned after the baseline: weeks of the season times sessions a week, as the Athletes
 * table says or, without it, as often as the athlete has come so far.
 */
export function plannedSessions(season: AthleteSeason, seasonWeeks: number): number {
  const { sessions, baselineSessions, details } = season;
  const first = sessions[0];
  const last = sessions[sessions.length - 1];
  if (first === undefined || last === undefined) return fewest;
  const weeksSoFar = Math.max(1, (last - first + 1) / 7);
  const perWeek = details?.sessionsAWeek ?? Math.max(1, sessions.length / weeksSoFar);
  const planned = Math.round(seasonWeeks * perWeek) - baselineSessions;
  return Math.max(fewest, planned, sessions.length - baselineSessions);
}
