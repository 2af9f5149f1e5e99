import { shownShare } from "../../../src/local-host/command-line/shown-value";
import { dressedSquad } from "../../../src/local-host/files/dressed-squad";
import { type CellData, plainTab } from "../../../src/local-host/workbook-data";
import { percentWords, signedPercentWords } from "../../../src/words/reasons-figures";
import { opened } from "../opened";

/** The looks of a column of the Squad tab, in its first row of answers. */
function formatOf(column: number): string {
  const tab = plainTab("Squad", [
    [{ value: "Squad" }],
    [{ value: "Athlete" }],
    [{ value: null, formula: "=SQUAD_TABLE(Athletes!A:J)" }],
  ]);
  return dressedSquad(tab).cells[2]![column]!.format!;
}

/** What the grid shows of shares in a column dressed so. */
async function seen(format: string, shares: readonly number[]): Promise<string[]> {
  const cells = shares.map((value): CellData[] => [{ value, format }]);
  const host = await opened({ Squad: cells });
  return host
    .tab("Squad")
    .getRange(1, 1, shares.length, 1)
    .getDisplayValues()
    .map(([text]) => text!);
}

const change = formatOf(5);
const sizes = [6, 7].map(formatOf);
const small = [0.012, 0.004, 0.0007, 0.0004, 0, -0.0004, -0.0007, -0.004, -0.012];

test("a change of under half a percent is seen with its decimal and its sign, nothing without a sign", async () => {
  const shown = await seen(change, small);
  expect(shown).toEqual([
    "+1.2 %",
    "+0.4 %",
    "+0.1 %",
    "0 %",
    "0 %",
    "0 %",
    "−0.1 %",
    "−0.4 %",
    "−1.2 %",
  ]);
});

test("cell, terminal and sentence say the same of a small change and a small wobble", async () => {
  const said = small.map((share) => signedPercentWords(100 * share));
  expect(await seen(change, small)).toEqual(said);
  expect(small.map((share) => shownShare(share, true))).toEqual(said);
  const plain = small.filter((share) => share >= 0);
  for (const size of sizes) {
    expect(await seen(size, plain)).toEqual(plain.map((share) => percentWords(100 * share)));
  }
  expect(plain.map((share) => shownShare(share, false))).toEqual(
    plain.map((share) => percentWords(100 * share)),
  );
});

test("a large change stays whole in a sentence and keeps one decimal in the cell", async () => {
  expect(await seen(change, [-0.083, 0.104])).toEqual(["−8.3 %", "+10.4 %"]);
  expect([-0.083, 0.104].map((share) => shownShare(share, true))).toEqual(["−8 %", "+10 %"]);
});
