/** Words that are set apart wherever they stand: fallen, risen, not known. */
export const lowWords = ["slipping", "below usual", "well below usual"] as const;
export const highWords = ["rising", "above usual"] as const;

/**
 * The two tints and their ink, dark on light at more than 7:1; both print as one grey, so the word
 * carries the meaning.
 */
export const dressColours = {
  low: { background: "#fbd9b5", ink: "#6b3300" },
  high: { background: "#d3e6f8", ink: "#0b3f6f" },
  unsure: { ink: "#5a5f66" },
} as const;

export function dressOf(word: string): "low" | "high" | "unsure" | "plain" {
  if (lowWords.some((low) => word.startsWith(low))) return "low";
  if (highWords.some((high) => word.startsWith(high))) return "high";
  return word.startsWith("too few rows") ? "unsure" : "plain";
}
