import { readFileSync } from "node:fs";
import type { AxeResults, ContextSpec } from "axe-core";
import type { Frame, Page } from "playwright-core";

// axe-core (Deque, MPL-2.0) is only run here; its findings are outside our own judgement.
const axe = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");

/** Serious and critical findings, each with its first place; the whole document unless parts are named. */
export async function seriousFindings(
  where: Page | Frame,
  parts: readonly string[] = ["html"],
): Promise<string[]> {
  // Evaluated from outside the page, so its own policy does not stand in the way.
  await where.evaluate(axe);
  const { violations, passes } = await where.evaluate(async (include) => {
    const { axe: checker } = globalThis as unknown as {
      axe: { run: (context: ContextSpec, options: object) => Promise<AxeResults> };
    };
    return checker.run({ include: include.map((part) => [part]) }, { iframes: false });
  }, parts);
  if (passes.length === 0) throw new Error("Nothing was there to be checked.");
  return violations
    .filter(({ impact }) => impact === "serious" || impact === "critical")
    .map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
}
