import type { LiftingSet } from "../../record/lifting-set";
import type { LiftSession } from "./lift-session";

/** The marker set as an athlete takes it; a load of null where none is taken. */
export type UsualMarker = {
  readonly markerKg: number | null;
  /** No heavier than its day's work sets: a warm-up, which comes down with them. */
  readonly markerIsUnder: boolean;
};

/** The last marker lighter than its day's work sets; one as heavy was taken down to them, as after time off. */
export function usualMarker(
  lift: readonly LiftingSet[],
  sessions: readonly LiftSession[],
): UsualMarker {
  const workOf = new Map(sessions.map(({ day, work }) => [day, work]));
  const markers = lift.filter(({ kind, loadKg }) => kind === "marker" && loadKg !== null);
  const lightest = ({ day }: LiftingSet) =>
    Math.min(...(workOf.get(day) ?? []).map(({ loadKg }) => loadKg!));
  const usual = markers.filter((marker) => marker.loadKg! < lightest(marker));
  const told = usual.length > 0 ? usual : markers;
  const last = told[told.length - 1];
  return {
    markerKg: last?.loadKg ?? null,
    markerIsUnder: last !== undefined && last.loadKg! <= lightest(last),
  };
}
