import { solved } from "../mirror-figures/matrix";
import { normalTwoSided } from "../reference/normal-two-sided";

/** Where a chart stands after one value: rising in the value, in a straight line where it is not cut off. */
type Step = (standing: number, value: number) => number;

const manySd = 40;

/** Share of normal values at or under one. */
function under(value: number): number {
  const tail = normalTwoSided(Math.abs(value)) / 2;
  return value < 0 ? tail : 1 - tail;
}

/** The value that brings the chart from where it stands to a boundary. */
function valueTo(step: Step, standing: number, boundary: number): number {
  const far = step(standing, manySd);
  const slope = far - step(standing, manySd - 1);
  return manySd - (far - boundary) / slope;
}

/**
 * Mean number of values until a chart leaves its cells, by a Markov chain over them (Brook & Evans 1972,
 * Biometrika 59:539–549): (I − transitions)·length = 1.
 *
 * @param edges of the cells, rising; below the first is the first cell when `floor`, else a signal
 * @param standings where each cell is taken to stand
 * @param start cell the chart begins in
 */
function chainLength(
  step: Step,
  shift: number,
  edges: readonly number[],
  standings: readonly number[],
  floor: boolean,
  start: number,
): number {
  const system = standings.map((standing, i) => {
    const shares = edges.map((edge, e) =>
      floor && e === 0 ? 0 : under(valueTo(step, standing, edge) - shift),
    );
    const row = standings.map((_, j) => (i === j ? 1 : 0) - (shares[j + 1]! - shares[j]!));
    return row;
  });
  return solved(
    system,
    standings.map(() => [1]),
  )[start]![0]!;
}

/** Lengths for cells ever finer by half go to the exact one as 1/cells² (Richardson 1911). */
function toTheExact(lengthWith: (cells: number) => number): number {
  const [coarse, middle, fine] = [25, 50, 100].map(lengthWith) as [number, number, number];
  const once = [(4 * middle - coarse) / 3, (4 * fine - middle) / 3] as const;
  return (16 * once[1] - once[0]) / 15;
}

/** A chart that is cut off at zero and signals above the limit. */
export function lengthAboveZero(step: Step, limit: number, shift: number): number {
  return toTheExact((cells) => {
    // The first cell stands at zero and reaches half as far.
    const width = (2 * limit) / (2 * cells - 1);
    const standings = Array.from({ length: cells }, (_, i) => i * width);
    const edges = [0, ...standings.map((standing) => standing + width / 2)];
    return chainLength(step, shift, edges, standings, true, 0);
  });
}

/** A chart that begins at zero and signals beyond the limit on either side. */
export function lengthBothSides(step: Step, limit: number, shift: number): number {
  return toTheExact((half) => {
    const cells = 2 * half + 1;
    const width = (2 * limit) / cells;
    const edges = Array.from({ length: cells + 1 }, (_, e) => e * width - limit);
    const standings = Array.from({ length: cells }, (_, i) => (i - half) * width);
    return chainLength(step, shift, edges, standings, false, half);
  });
}
