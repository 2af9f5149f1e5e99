import { asPrintedName, bareName, builtInName, loadedName, touchName } from "./contenders";
import { type FigureName, figureNames } from "./figures";
import type { Found } from "./found";
import { formulas } from "./product";

type Time = "warmMs" | "firstMs";

/** Peers start from the rows, as a formula does; the database with its rows loaded has its own line. */
const noPeers = new Set([touchName, bareName, asPrintedName, loadedName]);

/** The formulas as multiples of the others at each size, and what they hold at the peak. */
export function verdict(found: readonly Found[], sizes: readonly number[]): string {
  const line = (words: string, value: (rows: number) => string | undefined) =>
    words.padEnd(50) + sizes.map((rows) => (value(rows) ?? "–").padStart(11)).join("");
  return [
    "",
    line("Each formula, as a multiple of", (rows) => `${rows}`),
    ...figureNames.flatMap((figure) => {
      const against = (others: (one: Found) => boolean, time: Time) => (rows: number) =>
        multiple(found, { figure, rows, others, time });
      const named = (name: string) => (one: Found) => one.contender === name;
      const peer = ({ contender }: Found) =>
        !noPeers.has(contender) && contender !== formulas[figure].name;
      const printed = found.some((one) => one.figure === figure && one.contender === asPrintedName);
      return [
        formulas[figure].name,
        line("  the bare pass", against(named(bareName), "warmMs")),
        ...(printed
          ? [
              line(
                "  a bare pass for the figure it prints",
                against(named(asPrintedName), "warmMs"),
              ),
            ]
          : []),
        line("  the quickest peer from the rows", against(peer, "warmMs")),
        line("  the same, first runs", against(peer, "firstMs")),
        line("  the database, rows loaded", against(named(loadedName), "warmMs")),
        ...(found.some(({ contender }) => contender === builtInName)
          ? [line("  the built-in formulas, first runs", against(named(builtInName), "firstMs"))]
          : []),
        line("  copies of the rows held at the peak", (rows) =>
          ownAt(found, figure, rows)?.copies.toFixed(2),
        ),
      ];
    }),
  ].join("\n");
}

function ownAt(found: readonly Found[], figure: FigureName, rows: number): Found | undefined {
  return found.find((one) => one.rows === rows && one.contender === formulas[figure].name);
}

/** The formula's time over the quickest of some others' at one size. */
function multiple(
  found: readonly Found[],
  given: {
    readonly figure: FigureName;
    readonly rows: number;
    readonly others: (one: Found) => boolean;
    readonly time: Time;
  },
): string | undefined {
  const { figure, rows, others, time } = given;
  const own = ownAt(found, figure, rows);
  const times = found
    .filter((one) => one.figure === figure && one.rows === rows && others(one))
    .map((one) => one[time]);
  if (own === undefined || times.length === 0) return undefined;
  const value = own[time] / Math.min(...times);
  return value.toFixed(value < 0.1 ? 4 : 2);
}
