import { loadDrop, usualShareOff } from "../blocks/load-drop";

/** One line of the day's decision: marker speeds from–to, and the load for the sets. */
export type DayBand = {
  /** m/s to two decimals; null is open. */
  readonly from: number | null;
  readonly to: number | null;
  /** Null: no heavy work. */
  readonly loadKg: number | null;
  /** Real share off the plan after rounding, fraction. */
  readonly share: number;
};

const hundredth = 0.01;

/**
 * The day's decision for paper: for each speed the marker may show, the load. Bands are those of
 * `loadDrop`, written in hundredths so that every speed is in exactly one.
 *
 * @param shareOff share off a clearly slow day, fraction
 * @param built the load under a lighter one that the gym's plates make, kg
 * @returns empty when no load but the plan exists
 */
export function dayBands(
  plannedKg: number,
  usualMarkerSpeed: number,
  stepKg: number,
  shareOff: number = usualShareOff,
  built: (kg: number) => number = (kg) => kg,
): readonly DayBand[] {
  const usual = Math.round(usualMarkerSpeed * 100);
  const at = (speed: number) =>
    loadDrop(plannedKg, speed * hundredth, usual * hundredth, stepKg, shareOff);
  const bands: DayBand[] = [];
  let open: { top: number | null; key: string; loadKg: number | null; share: number } | null = null;
  // From fast to slow, one hundredth at a time: where the answer changes a new band begins.
  for (let speed = usual; speed >= Math.max(5, usual - 20); speed--) {
    const drop = at(speed);
    if (!drop.ok) return [];
    const { value } = drop;
    const loadKg =
      value.kind === "lighter"
        ? built(value.loadKg)
        : value.kind === "as planned"
          ? value.loadKg
          : null;
    const share = value.kind === "lighter" ? 1 - loadKg! / plannedKg : 0;
    const key = String(loadKg);
    if (open && open.key === key) continue;
    if (open) bands.push(band(open, speed + 1));
    open = { top: open ? speed : null, key, loadKg, share };
  }
  if (open) bands.push(band(open, null));
  return bands;
}

function band(
  { top, loadKg, share }: { top: number | null; loadKg: number | null; share: number },
  bottom: number | null,
): DayBand {
  return {
    from: bottom === null ? null : bottom / 100,
    to: top === null ? null : top / 100,
    loadKg,
    share,
  };
}
