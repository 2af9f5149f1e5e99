import { listWords, sentence, spelled } from "./pages";
import { countWords, percentWords } from "./reasons-figures";

/** The day's decision without a speed to go by, with the squad's own share off. */
const byEye = (shareOff: number) =>
  `First work set slower than usual by eye, or with fewer left in reserve: repeat it once${shareOff > 0 ? `, and if it is so again take about ${percentWords(100 * shareOff)} off` : ""}. Ill, or far slower: no heavy work, tell your coach.`;

/** Sentences that only paper draws: kept out of the script, which every formula loads. */
export const paperSentences = {
  madeWithout: {
    answers:
      "What was said of tabs, columns and names can no longer be read: made without it. Open Set up.",
    "week changes":
      "Earlier changes to this week can no longer be read: made without them. Open Next week.",
  },
  /** "Not used in full: 2 rows of Tomas Reyerson, 1 of Kofi Anstruther." */
  rowsNotUsed: (list: readonly { readonly athlete: string; readonly rows: number }[]) =>
    `Not used in full: ${list
      .map(({ athlete, rows }, at) => `${at > 0 ? rows : countWords(rows, "row")} of ${athlete}`)
      .join(", ")}.`,
  /** "Changed in the Next week tab and not on paper: G5. Change it in the sidebar and print again." */
  cellsNotFollowed: (cells: readonly string[]) =>
    `Changed in the Next week tab and not on paper: ${cells.join(", ")}. Change ${cells.length === 1 ? "it" : "them"} in the sidebar and print again.`,
  /** "Deleted in the Next week tab and still on paper: Oona Petrakell, Tue 30 Jun." */
  rowsDeleted: (lines: readonly string[]) =>
    `Deleted in the Next week tab and still on paper: ${lines.join("; ")}.`,
  /** "To ask about before anything is lifted: Gym E3." */
  askFirst: (places: readonly string[]) =>
    `To ask about before anything is lifted: ${places.join(", ")}.`,
  noBands: {
    "no speed": (shareOff: number) => `No usual speed is known yet. ${byEye(shareOff)}`,
    "no marker": () => "No marker set: the main lift has another in its place.",
  },
  /** What to mind while jumping; the longest contact in the coach's decimal mark. */
  /** What to mind of the jumps that are on the card. */
  jumpCare: (of: { readonly contactS: string | null; readonly box: "soft" | "firm" | null }) =>
    [
      ...(of.box === "soft" ? ["Soft box."] : []),
      ...(of.contactS === null ? [] : [`Contact past ${of.contactS} s: lower the drop.`]),
      ...(of.box === null ? [] : ["Two misses end the box jump."]),
      "Achilles or calf pain: no jumps.",
    ].join(" "),
  rackLead: (lifters: number, racks: number, minutes: number) =>
    `${sentence(spelled(lifters))} ${lifters === 1 ? "lifts" : "lift"} at ${spelled(racks)} ${racks === 1 ? "rack" : "racks"}, lightest first at each, about ${minutes} min. Marker sets, then jumps, then the main lift in turn: one set each, then back to the top. The card decides the load; “if slower” gives its next ones.`,
  /** What the gym lacks at once; "" where that is not known of every plate. */
  platesSaid: (
    short: { readonly bars: readonly string[]; readonly stacks: readonly string[] } | null,
  ) => {
    if (short === null) return "";
    const { bars, stacks } = short;
    if (bars.length + stacks.length === 0)
      return "Every load and stack can be built at the same time.";
    return [
      bars.length === 0
        ? ""
        : `Not enough of ${listWords(bars)} for every bar at once: pass them from rack to rack, or change a load.`,
      stacks.length === 0
        ? ""
        : `Not enough of ${listWords(stacks)} for every load and the stacks at once: lift and jump in turn.`,
    ]
      .filter((part) => part !== "")
      .join(" ");
  },
  picturesTitle: "Charts of those who moved",
  reading:
    "Dots are sessions; the grey band is two wobbles either side of baseline; triangles lie outside it. The thick line is where a change is placed. Upright lines are races, solid for A.",
} as const;
