/**
 * Time of one run, ms. Beside other programs the clock also counts their turns, so the processor's time
 * is taken where it is the less; with several threads the clock is.
 */
export async function timeOf(run: () => unknown): Promise<number> {
  const used = process.cpuUsage();
  const started = performance.now();
  await run();
  const clock = performance.now() - started;
  const { user, system } = process.cpuUsage(used);
  return Math.min(clock, (user + system) / 1000);
}
