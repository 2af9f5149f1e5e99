import { againstLine, againstUsual } from "../../../src/coaching/readiness/against-usual";
import type { ReadinessItem } from "../../../src/coaching/readiness/readiness";
import {
  moreIsWorse,
  usualReadinessSettings as settings,
  usualSpread,
} from "../../../src/coaching/readiness/readiness-settings";
import { wordOfDay } from "../../../src/coaching/readiness/word-of-day";
import worked from "../worked-cases.json";

/** Our own worked cases: see the note in the file. */
type Reading = { today: number | null; se?: number; past: number[] };
type WorkedDay = {
  id: number;
  name: string;
  input: { speed?: Reading; jump?: Reading; items?: Record<string, Reading> };
  output: {
    word: string;
    D: number | null;
    speed: number | null;
    jump: number | null;
    diary: number | null;
    items: Record<string, number | null>;
    reason: string | null;
  };
};
const days = worked.cases.filter(
  ({ kind }) => kind === "readiness today",
) as unknown as WorkedDay[];
const near = (value: number | null) => (value === null ? null : expect.closeTo(value, 6));
const usual = (part: keyof typeof usualSpread, past: number[]) => ({
  past,
  squadSd: usualSpread[part].sd,
  leastSd: usualSpread[part].least,
});

test.each(days)("worked day $id: $name", ({ input, output }) => {
  const speed =
    input.speed && input.speed.today !== null
      ? againstLine(
          input.speed.today,
          input.speed.se ?? 0,
          usual("speed", input.speed.past),
          settings,
        )
      : null;
  const jump =
    input.jump && input.jump.today !== null
      ? againstUsual(input.jump.today, usual("jump", input.jump.past), settings)
      : null;
  const items: Partial<Record<ReadinessItem, number | null>> = {};
  for (const [name, { today, past }] of Object.entries(input.items ?? {})) {
    const item = name as ReadinessItem;
    const z = today === null ? null : againstUsual(today, usual(item, past), settings);
    items[item] = z === null || !moreIsWorse.has(item) ? z : -z;
  }
  expect(speed).toEqual(near(output.speed));
  expect(jump).toEqual(near(output.jump));
  for (const [item, z] of Object.entries(output.items)) {
    expect(items[item as ReadinessItem]).toEqual(near(z));
  }
  expect(wordOfDay({ speed, jump, items }, settings)).toEqual({
    word: output.word,
    size: near(output.D),
    diary: near(output.diary),
    reason: output.reason,
  });
});
