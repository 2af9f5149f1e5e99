import { leadSpeed, meanUnderFastest } from "../../../src/coaching/bar-speed/lead-speed";
import type { LiftingSet } from "../../../src/coaching/record/lifting-set";
import { speedSetReader, withLeads } from "../../../src/coaching/series/speed-set";
import { firstDay, liftingSet } from "../series/invented-season";

const markers = (
  count: number,
  repSpeeds: readonly (number | null)[],
  over: Partial<LiftingSet> = {},
) => {
  const read = speedSetReader();
  const sets = Array.from({ length: count }, (_, at) =>
    liftingSet({ day: firstDay + at, kind: "marker", repSpeeds, ...over }),
  );
  return withLeads(sets.flatMap((set) => read(set) ?? []));
};

test("a leading set's speed is the line's and its own offset", () => {
  const line = {
    intercept: 1.4,
    slope: -0.01,
    interceptVariance: 0,
    covariance: 0,
    slopeVariance: 0,
  };
  expect(leadSpeed(line, { offset: 0.03, sd: 0.04, freedom: 9 }, 50)).toBeCloseTo(0.93, 12);
});

test("the mean lies under the fastest by the athlete's own habit", () => {
  // Fastest 0.90 over means of 0.88 and of 0.87: 0.02 and 0.03, and midway where there are as many of both.
  const usual = markers(3, [0.9, 0.88, 0.86]);
  const own = [...usual, ...markers(1, [0.9, 0.86, 0.85])];
  expect(meanUnderFastest(own, "marker")).toBeCloseTo(0.02, 9);
  const even = [...usual, ...markers(3, [0.9, 0.86, 0.85])];
  expect(meanUnderFastest(even, "marker")).toBeCloseTo(0.025, 9);
  // A repetition misread takes its set's mean far under: 0.21, which no other day says.
  const misread = [...usual, ...markers(1, [0.9, 0.3, 0.87])];
  expect(meanUnderFastest(misread, "marker")).toBeCloseTo(0.02, 9);
});

test("what is typed is what was kept: no gap without single repetitions", () => {
  const means = markers(6, [], { setSpeed: 0.88, setSpeedIs: "mean of reps" });
  expect([meanUnderFastest(means, "marker"), meanUnderFastest([], "marker")]).toEqual([0, 0]);
  // A repetition that was not read is none.
  expect(meanUnderFastest(markers(6, [0.9, null, 0.88]), "marker")).toBeCloseTo(0.01, 9);
});

test("only sets that lead their day, and only of the kind asked for", () => {
  const read = speedSetReader();
  const day = (repSpeeds: readonly number[], kind: "marker" | "work") =>
    liftingSet({ day: firstDay, kind, repSpeeds });
  const sets = withLeads(
    [
      day([0.9, 0.88], "marker"),
      day([0.9, 0.7], "marker"),
      day([0.6, 0.56], "work"),
      day([0.6, 0.4], "work"),
    ].map((set) => read(set)!),
  );
  expect(meanUnderFastest(sets, "marker")).toBeCloseTo(0.01, 9);
  expect(meanUnderFastest(sets, "work")).toBeCloseTo(0.02, 9);
});
