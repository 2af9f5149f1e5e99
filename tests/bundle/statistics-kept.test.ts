import { execFileSync } from "node:child_process";
import { join } from "node:path";
import { runInNewContext } from "node:vm";
import * as whole from "../../src/statistics/distributions";

const root = join(__dirname, "../..");
const program = `
  import { build } from "esbuild";
  import { withoutIdleStatistics } from "./src/bundle/without-idle-statistics.mjs";
  const { outputFiles } = await build({
    entryPoints: ["src/statistics/distributions.ts"],
    plugins: [withoutIdleStatistics],
    bundle: true, write: false, format: "iife", globalName: "kept",
  });
  process.stdout.write(outputFiles[0].text);
`;
const text = execFileSync(process.execPath, ["--input-type=module", "--eval", program], {
  cwd: root,
  encoding: "utf8",
});
const kept = runInNewContext(`${text}; kept`) as typeof whole;

const shares = [1e-6, 0.005, 0.05, 0.3, 0.5, 0.8, 0.975, 0.9999];
const degrees = [0.5, 1, 2, 3, 7.5, 30, 1000];
const each = shares.flatMap((share) => degrees.map((df) => [share, df] as const));

test("the script's part of the statistics library gives the figures of the whole library", () => {
  const figures = (from: typeof whole) => [
    ...each.map(([share, df]) => from.studentQuantile(share, df)),
    ...each.map(([share, df]) => from.chiSquareQuantile(share, df)),
    ...each.flatMap(([share, df]) =>
      degrees.map((lower) => from.varianceRatioQuantile(share, df, lower)),
    ),
    ...shares.map((share) => from.normalQuantile(share)),
  ];
  expect(JSON.stringify(figures(kept))).toBe(JSON.stringify(figures(whole)));
});

test("what nobody asks for is not in it", () => {
  expect(text).not.toMatch(/transpose|weibull|randn/);
  expect(text).toMatch(/ibetainv/);
});
