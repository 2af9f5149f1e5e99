import * as rows from "./readers";

const steps = (...cells: unknown[]) => {
  const reading = rows.readAthletes([
    ["Athlete", "Step up"],
    ...cells.map((cell, i) => [`Runner ${String.fromCharCode(65 + i)}`, cell]),
  ]);
  return {
    shares: reading.records.map(({ stepShare }) => stepShare),
    issues: reading.issues.map(({ code, cell, facts }) => {
      expect(facts.heading).toBe("Step up");
      if (code === "implausible") expect(facts).toMatchObject({ low: 0, unit: "%" });
      return [code, cell, facts.high];
    }),
  };
};

test("an athlete's own step: a percent cell, a plain number of percent, and text are one", () => {
  expect(steps(0.05, 5, "5 %", "2,5%", 0, "", "–")).toEqual({
    shares: [0.05, 0.05, 0.05, 0.025, 0, null, null],
    issues: [],
  });
});

test("a step past ten percent, or one that may be a fraction or a percent, is asked about", () => {
  expect(steps(0.5, 12, "large", 0.99, -1, "5?", true, Number.NaN)).toEqual({
    shares: [null, null, null, null, null, null, null, null],
    issues: [
      ["implausible", "B2", 10],
      ["implausible", "B3", 10],
      ["not-a-number", "B4", undefined],
      ["implausible", "B5", 10],
      ["implausible", "B6", 10],
      ["unsure", "B7", undefined],
      ["not-a-number", "B8", undefined],
      ["not-a-number", "B9", undefined],
    ],
  });
  expect(steps("0.5 % ", 1, 10, 0.1, "1", "10", "0.1 %", "n/a").shares).toEqual([
    0.005,
    0.01,
    0.1,
    0.1,
    0.01,
    0.1,
    0.001,
    null,
  ]);
});

test("without the column nothing is said of steps", () => {
  const [one] = rows.readAthletes([["Athlete"], ["Runner A"]]).records;
  expect(one).not.toHaveProperty("stepShare");
});
