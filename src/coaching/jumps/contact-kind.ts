/** Border between a fast and a slow stretch–shortening contact, s (common practice, no source). */
export const slowContactS = 0.25;

/** A contact of 0.25 s or less is fast. */
export function contactKind(contactS: number): "fast" | "slow" {
  return contactS <= slowContactS ? "fast" : "slow";
}
