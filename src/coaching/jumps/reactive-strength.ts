import { accept, type Outcome, refuse } from "../../outcome";

/** Less is no jump, but metres taken for centimetres. */
const leastCm = 3;

/**
 * Reactive strength index of a drop jump: height / ground contact time, m/s (described by Ebben &
 * Petushek 2010, J Strength Cond Res 24(8):1983–87).
 *
 * @param heightCm cm
 * @param contactS s
 * @returns m/s. Refuses `height-impossible` (not 3–150 cm) and `contact-impossible` (not 0.05–2 s).
 */
export function reactiveStrength(heightCm: number, contactS: number): Outcome<number> {
  if (!(heightCm >= leastCm && heightCm <= 150)) return refuse("height-impossible", { heightCm });
  if (!(contactS >= 0.05 && contactS <= 2)) return refuse("contact-impossible", { contactS });
  return accept(heightCm / 100 / contactS);
}
