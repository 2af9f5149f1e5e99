import type { ReadinessItem, ReadinessWord } from "./readiness";
import type { ReadinessSettings } from "./readiness-settings";

/** Scores of one day's parts, above zero is good; null or missing where there is none. */
export type DayScores = {
  readonly speed?: number | null;
  readonly jump?: number | null;
  readonly items?: Readonly<Partial<Record<ReadinessItem, number | null>>>;
};

export type WordOfDay = {
  readonly word: ReadinessWord;
  /** Combined distance from usual, in units of wobble; null for `too few rows`. */
  readonly size: number | null;
  /** The diary's items as one score; null with fewer than two. */
  readonly diary: number | null;
  /** The part that says most on the side of the word; null for a usual day. */
  readonly reason: "speed" | "jump" | ReadinessItem | null;
};

const leastItems = 2;

/**
 * All parts of a day as one distance from usual: the sum of the scores, each weighed by its
 * reliability, over the SD that the sum of such correlated scores has on ordinary days. The diary's
 * reliability grows with its items (Spearman 1910, Brown 1910).
 */
export function wordOfDay(scores: DayScores, settings: ReadinessSettings): WordOfDay {
  const items = itemScores(scores);
  const diary = diaryScore(items, settings);
  const { betweenItems: r } = settings;
  const parts: { name: "speed" | "jump" | "diary"; z: number; trust: number }[] = [];
  if (isScore(scores.speed)) {
    parts.push({ name: "speed", z: scores.speed, trust: settings.speedTrust });
  }
  if (isScore(scores.jump)) {
    parts.push({ name: "jump", z: scores.jump, trust: settings.jumpTrust });
  }
  if (diary !== null) {
    const m = items.length;
    parts.push({ name: "diary", z: diary, trust: (m * r) / (1 + (m - 1) * r) });
  }
  if (parts.length === 0) return { word: "too few rows", size: null, diary, reason: null };

  let sum = 0;
  let variance = 0;
  for (const one of parts) {
    sum += one.trust * one.z;
    for (const other of parts) {
      const correlation =
        one === other
          ? 1
          : one.name === "diary" || other.name === "diary"
            ? settings.withDiary
            : settings.speedWithJump;
      variance += one.trust * other.trust * correlation;
    }
  }
  const size = sum / Math.sqrt(variance);
  const word = wordFor(size, settings);
  if (word === "as usual") return { word, size, diary, reason: null };

  const side = Math.sign(size);
  const most = largest(parts.map(({ name, z, trust }) => [name, side * z * trust] as const));
  if (most !== "diary") return { word, size, diary, reason: most };
  return {
    word,
    size,
    diary,
    reason: largest(items.map(([name, z]) => [name, side * z] as const)),
  };
}

function wordFor(size: number, { wellBelow, below, above }: ReadinessSettings): ReadinessWord {
  if (size <= wellBelow) return "well below usual";
  if (size <= below) return "below usual";
  return size >= above ? "above usual" : "as usual";
}

function itemScores({ items = {} }: DayScores): readonly (readonly [ReadinessItem, number])[] {
  return (Object.entries(items) as [ReadinessItem, number | null][]).filter(
    (entry): entry is [ReadinessItem, number] => isScore(entry[1]),
  );
}

function diaryScore(
  items: readonly (readonly [ReadinessItem, number])[],
  { betweenItems }: ReadinessSettings,
): number | null {
  const m = items.length;
  if (m < leastItems) return null;
  const sum = items.reduce((total, [, z]) => total + z, 0);
  return sum / Math.sqrt(m + m * (m - 1) * betweenItems);
}

function largest<Name>(sizes: readonly (readonly [Name, number])[]): Name | null {
  let name: Name | null = null;
  let most = 0;
  for (const [one, size] of sizes) {
    if (size <= most) continue;
    name = one;
    most = size;
  }
  return name;
}

function isScore(value: number | null | undefined): value is number {
  return value !== null && value !== undefined;
}
