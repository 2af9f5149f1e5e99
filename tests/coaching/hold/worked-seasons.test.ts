import { changeSince } from "../../../src/coaching/hold/evidence/change-since";
import { evidenceLimit } from "../../../src/coaching/hold/evidence/evidence-limit";
import { onsetRange } from "../../../src/coaching/hold/evidence/onset-range";
import { stepEvidence } from "../../../src/coaching/hold/evidence/step-evidence";
import { visibleFall } from "../../../src/coaching/hold/evidence/visible-fall";
import { wordOfSeason } from "../../../src/coaching/hold/evidence/word-of-season";
import { usualHoldSettings } from "../../../src/coaching/hold/hold-settings";
import { watchedSeason } from "../../../src/coaching/hold/watched-season";
import worked from "../worked-cases.json";

/** Our own worked cases: see the note in the file. */
type Season = {
  id: number;
  name: string;
  input: {
    x: (number | null)[][];
    g?: ((number | null)[] | null)[];
    s0: number[];
    B: number;
    n: number;
    alpha: number;
    options?: { rho?: number };
  };
  output: {
    limit: number;
    used: number[];
    baseline: number[];
    typicalErrorLast: number[];
    evidenceLow: (number | null)[];
    evidenceHigh: (number | null)[];
    words: string[];
    since: (number | null)[];
    onsetRange80?: number[];
    moved?: { k: number; change: number; se: number }[];
    recent?: number;
    visible?: number;
  };
};
const seasons = worked.cases.filter(({ kind }) => kind === "season hold") as unknown as Season[];
const numbers = (values: (number | null)[]) => values.map((value) => value ?? Number.NaN);

describe.each(seasons)("worked season $id: $name", ({ input, output }) => {
  const season = watchedSeason(
    input.x.map((values, k) => {
      const loadError = input.g?.[k];
      return {
        values: numbers(values),
        squadError: input.s0[k]!,
        ...(loadError ? { loadError: loadError.map((g) => g ?? 0) } : {}),
      };
    }),
    input.B,
    input.n,
    // The worked cases were computed with these constants.
    {
      ...usualHoldSettings,
      betweenMeasures: 0.4,
      betweenShare: 1,
      serialByRun: false,
      clip: 2,
      leastRows: 2,
      fallShown: 3.4,
      stepShare: 0,
      varianceShare: 1,
      togetherShare: 0.5,
      byError: false,
      longestBaseline: 1,
      serial: input.options?.rho ?? 0,
    },
  );
  const limit = evidenceLimit(input.alpha, input.n);
  const last = season.sessions - 1;
  const words = numbers(output.evidenceLow).map((_, s) => wordOfSeason(season, limit, s));

  test("limit, baselines and typical errors", () => {
    expect(limit).toBeCloseTo(output.limit, 6);
    expect(season.measures.map(({ place }) => place)).toEqual(output.used);
    season.measures.forEach((measure, m) => {
      expect(measure.baselineMean).toBeCloseTo(output.baseline[m]!, 6);
      expect(measure.errors[last]).toBeCloseTo(output.typicalErrorLast[m]!, 6);
    });
  });

  test("evidence after every session", () => {
    output.evidenceLow.forEach((low, s) => {
      if (low === null) return;
      const evidence = stepEvidence(season, s);
      expect(evidence.low.total).toBeCloseTo(low, 6);
      expect(evidence.high.total).toBeCloseTo(output.evidenceHigh[s]!, 6);
    });
  });

  test("the word and its onset after every session", () => {
    expect(words.map(({ word }) => word)).toEqual(output.words);
    expect(words.map(({ since }) => since)).toEqual(output.since);
  });

  test("what moved, the range of its onset, and what fall would show", () => {
    const { word, since, evidence } = words[last]!;
    expect(visibleFall(season)).toEqual(
      output.visible === undefined ? null : expect.closeTo(output.visible, 6),
    );
    expect(word === "slipping" || word === "rising").toBe(output.moved !== undefined);
    if (!output.moved || since === null || !evidence) return;
    const side = word === "slipping" ? evidence.low : evidence.high;
    expect(onsetRange(side.byOnset)).toEqual(output.onsetRange80);
    expect(side.recent).toBeCloseTo(output.recent!, 6);
    output.moved.forEach(({ change, se }, m) => {
      const moved = changeSince(season, m, since);
      expect(moved.change).toBeCloseTo(change, 6);
      expect(moved.error).toBeCloseTo(se, 6);
    });
  });
});
