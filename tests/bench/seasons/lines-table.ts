import { type Excess, lineErrors, type Rms } from "./line-errors";
import { markdownTable, percent } from "./table-text";
import type { World } from "./world";

/** By rows known of the athlete: errors of speed and strength of the three ways to draw the line. */
export function linesTable(
  title: string,
  world: World,
  squads: number,
  seed: number,
): readonly string[] {
  return markdownTable(
    [
      title,
      "this product",
      "squad's slope",
      "own line, where it falls",
      "this product there",
      "against squad's slope",
      "against own line",
    ],
    lineErrors(world, squads, seed).map((one) => [
      String(one.rows),
      errors(one.product),
      errors(one.squadSlope),
      errors(one.ownLine),
      errors(one.productThere),
      beyond(one.beyondSquadSlope),
      beyond(one.beyondOwnLine),
    ]),
  );
}

const errors = ({ speed, strength }: Rms) =>
  Number.isFinite(speed) ? `${speed.toFixed(4)} m/s, ${percent(strength, 1)}` : "–";

const beyond = ({ share, error }: Excess) =>
  Number.isFinite(share) ? `${percent(share, 1)} ± ${percent(error, 1)}` : "–";
