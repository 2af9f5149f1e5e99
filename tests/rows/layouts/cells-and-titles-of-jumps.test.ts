import { liftInWords, namesJump } from "../../../src/rows/layout/lift-in-words";
import { jumpCell } from "../../../src/rows/layout/wide/jump-cell";
import { type JumpPart, jumpTitle } from "../../../src/rows/layout/wide/jump-title";
import { isJumpColumn, partOf, testName } from "../../../src/rows/layout/wide/test-heading";

/** "5x15+5 ✓ | 5x15+5+10 ✗" for the attempts of a cell, its note in brackets, its mark or problem behind. */
const said = (cell: unknown, parts: readonly JumpPart[] = []) => {
  const { attempts, note, mark, problem } = jumpCell(cell, parts);
  const tries = attempts.map(({ stack, cleared, height, contact, flight }) =>
    [
      stack,
      cleared === undefined ? "" : cleared ? "✓" : "✗",
      height === undefined ? "" : `${height} high`,
      contact === undefined ? "" : `${contact} down`,
      flight === undefined ? "" : `${flight} up`,
    ]
      .filter(Boolean)
      .join(" "),
  );
  return [tries.join(" | "), note && `(${note})`, mark, problem].filter(Boolean).join(" ");
};

test.each([
  ["5x15+5", "5x15+5 ✓"],
  ["5 × 15 + 5", "5×15+5 ✓"],
  ["5x15+2,5", "5x15+2,5 ✓"],
  ["5x15+5 o", "5x15+5 ✓"],
  ["5x15+5 o-", "5x15+5 ✓"],
  ["5x15 X", "5x15 ✗"],
  ["5x15 xxo", "5x15 ✗ | 5x15 ✗ | 5x15 ✓"],
  ["5x15*", "5x15 ✗ *"],
  ["5x15 ** o", "5x15 ✗ **"],
  ["5x15†", "5x15 ✗ †"],
  // No plate is as heavy: a height with the mark of a footnote.
  ["27,5*", "27,5 high *"],
  ["31 cm *", "31 cm high *"],
  ["25.5† late", "25.5 high (late) †"],
  ["20*", "20 ✗ *"],
  ["25*", "25 ✗ *"],
  ["20 cm*", "20 cm high *"],
  ["4x15 o / 5x15 x-", "4x15 ✓ | 5x15 ✗"],
  ["4x15 o / +5 o / + 2x5 x", "4x15 ✓ | 4x15+5 ✓ | 4x15+5+2x5 ✗"],
  ["5x15 hands on knees", "5x15 ✓ (hands on knees)"],
  ["5x15 o  late ", "5x15 ✓ (late)"],
  ["5x15+5, 3 tries", "5x15+5 ✓ (, 3 tries)"],
  ["20+10", "20+10 ✓"],
  ["5x15?", "unsure"],
  ["5x15 ??", "unsure"],
  ["5x15? tired", "jump-unread"],
  ["4x15 o / 5x15 done", "jump-unread"],
  ["4x15 o / high 5x15", "jump-unread"],
  ["5x5x80", "jump-unread"],
  ["5 × 5 × 80", "jump-unread"],
  ["5x5 @80", "jump-unread"],
  ["5x5 80", "jump-unread"],
  ["5x5 82,5 kg", "jump-unread"],
  ["5x5 180lbs", "jump-unread"],
  ["5x5 180lb", "jump-unread"],
  ["5x15 2nd try", "5x15 ✓ (2nd try)"],
  ["4x15 o / tired", "4x15 ✓ (/ tired)"],
  ["4x15 o /\n+5\n+5 x", "4x15 ✓ | 4x15+5+5 ✗"],
  ["4x15 o\nlate\n\nsore", "4x15 ✓ (late sore)"],
  ["x", ""],
  ["xXx-", ""],
  ["xxxx", "(xxxx)"],
  ["off box", "(off box)"],
  ["n/a", ""],
  ["a 5x15", "jump-unread"],
  ["182/0.49/3", "jump-unread"],
])("under a title of boxes “%s” is %s", (cell, attempts) => {
  expect(said(cell)).toBe(attempts);
});

test.each([
  [15, ["stack"], "15 ✓"],
  ["15", ["stack"], "15 ✓"],
  ["15 tired", ["stack"], "15 ✓ (tired)"],
  [15, [], "15 high"],
  ["41,5", [], "41,5 high"],
  [".41 m", [], ".41 m high"],
  [" 41 cm", [], "41 cm high"],
  ["41cm", [], "41 cm high"],
  ['16"', [], '16 " high'],
  ["41 in sand", [], "41 high (in sand)"],
  ["41 x", [], "41 high (x)"],
  ["41 in", [], "41 in high"],
  ["41 cm tired", [], "41 cm high (tired)"],
  ["41 both feet", [], "41 high (both feet)"],
  ["41?", [], "unsure"],
  ["41 ??", [], "unsure"],
  ["41?!", [], "jump-unread"],
  [182, ["contact"], "182 down"],
  [0.49, ["flight", "contact"], "0.49 up"],
  [30, ["height", "contact"], "30 high"],
  ["182 ms", ["contact"], "182 down"],
  ["182/.49", ["contact", "flight"], "182 down .49 up"],
  ["182 ms / 0,49 s", ["contact", "flight"], "182 down 0,49 up"],
  ["30 / 182 ms", ["height", "contact"], "30 high 182 down"],
  [".49 / 182", ["flight", "contact"], "182 down .49 up"],
  ["182 Achilles", ["contact", "flight"], "182 down (Achilles)"],
  ["182/.49 Achilles sore", ["contact", "flight"], "182 down .49 up (Achilles sore)"],
  ["182/.49", ["contact"], "jump-unread"],
  ["a182", ["contact"], "jump-unread"],
  ["182 4", ["contact"], "jump-unread"],
  [true, [], "jump-unread"],
  [false, [], ""],
  ["", [], ""],
] as const)("%p under %p is %s", (cell, parts, attempt) => {
  expect(said(cell, parts)).toBe(attempt);
});

const title = (text: string) => {
  const { test, parts, dropCm, landingCm, landingStack, unit } = jumpTitle(text);
  return [
    test,
    parts.map(({ part, unit }) => [part, unit?.name].filter(Boolean).join(" ")).join("/"),
    dropCm === null ? "" : `from ${dropCm}`,
    landingCm === null ? "" : `on ${landingCm}`,
    landingStack === null ? "" : `on ${landingStack}`,
    unit === null ? "" : `in ${unit.name}`,
  ]
    .filter(Boolean)
    .join("; ");
};

test.each([
  ["1) straight-leg box – best clean", "straight-leg box"],
  ["12. Box jump", "Box jump"],
  [" 3 : Hop", "Hop"],
  ["Hop 3) left", "Hop 3) left"],
  ["Box jump (in)", "Box jump; in in"],
  ["Box jump [cm] left", "Box jump [cm] left; in cm"],
  ["Box jump (inches)", "Box jump; in in"],
  ["CMJ (best of three)", "CMJ"],
  ["2) drop jump 30 to floor: contact ms / flight s", "drop jump; contact ms/flight s; from 30"],
  ["Drop jump 40 cm to the floor", "Drop jump; from 40"],
  ["Drop jump from 40", "Drop jump from 40; from 40"],
  ["DJ 40", "DJ 40; from 40"],
  ["Hop from 30", "Hop from 30; from 30"],
  ["Drop 5", "Drop 5"],
  ["Drop jump 40 onto 5x15+5", "Drop jump 40 onto 5x15+5; from 40; on 5x15+5"],
  ["Drop jump 40 on to 2 × 15", "Drop jump 40 on to 2 × 15; from 40; on 2×15"],
  ["Drop jump 40 onto 15+2x5", "Drop jump 40 onto 15+2x5; from 40; on 15+2x5"],
  ["Drop jump 40 onto 30 cm", "Drop jump 40 onto 30 cm; from 40; on 30"],
  ["Drop jump 40 onto 10x5", "Drop jump 40 onto 10x5; from 40; on 10x5"],
  ["Drop jump 40 onto 15+10x5+20", "Drop jump 40 onto 15+10x5+20; from 40; on 15+10x5+20"],
  ["Drop jump 40 cm  to  the  floor", "Drop jump; from 40"],
  ["Box jump(cm)left", "Box jump left; in cm"],
  ["Hop:contact ms", "Hop; contact ms"],
  ["Hop for height: contact ms", "Hop for height; contact ms"],
  ["2) : contact", ": contact; contact"],
  ["Drop 10x5", "Drop 10x5"],
  ["Sprung: Kontaktzeit ms, Flugzeit ms", "Sprung; contact ms/flight ms"],
  ["Sprung: Kontakt, Flug, Höhe", "Sprung; contact/flight/height"],
  ["Hop: ground contact time (s) / ht cm", "Hop; contact s/height cm"],
  ["Hop height in", "Hop height in; height in"],
  ["Pogo contact", "Pogo contact; contact"],
  [": contact", ": contact; contact"],
  ["Highest box", "Highest box"],
])("the title “%s” says %s", (text, meant) => {
  expect(title(text)).toBe(meant);
});

test("headings of tests: which are jumps, what they hold, and the test's own name", () => {
  const columns = [
    "Box jump (cm)",
    "CMJ",
    "Kontakt ms",
    "Flugzeit",
    "Flight s",
    "Box squat",
    "Squat",
  ];
  expect(columns.map(isJumpColumn)).toEqual([true, true, true, true, true, false, false]);
  expect(
    [
      "Hop contact",
      "Kontakt",
      "Kontaktzeit",
      "flight (s)",
      "Flugzeit",
      "box stack",
      "Stapel",
      "Hop",
    ].map(partOf),
  ).toEqual(["contact", "contact", "contact", "flight", "flight", "stack", "stack", null]);
  expect(
    [
      "Box jump (cm)",
      "Drop jump contact  time ms",
      "Hop ground contact [ms]",
      "CMJ height, cm",
      "Hop – left: ",
      "Contact ms",
      "Box  jump stack",
      "Contact hop ms",
      "Jump in sand",
    ].map(testName),
  ).toEqual([
    "Box jump",
    "Drop jump",
    "Hop",
    "CMJ",
    "Hop – left",
    "drop jump",
    "Box jump",
    "hop",
    "Jump in sand",
  ]);
  expect(testName("Hop(cm)left")).toBe("Hop left");
});

test("lifts in words, the longest first, and words that name a jump", () => {
  expect(
    ["High-bar back squats", "FRONT SQUAT wk 3", "Kniebeuge", "RDLs", "hop squatting", "", 5].map(
      liftInWords,
    ),
  ).toEqual(["high-bar back squat", "front squat", "kniebeuge", "rdl", null, null, null]);
  expect(
    ["Hack squat – block 1", "Seated calf raises", "Trap-bar deadlift", "Pause, squat"].map(
      liftInWords,
    ),
  ).toEqual(["hack squat", "seated calf raise", "trap-bar deadlift", "squat"]);
  expect(["Box", "drop", "Jump squat", "box squat", "hops", "shop", 5].map(namesJump)).toEqual([
    true,
    true,
    false,
    false,
    true,
    false,
    false,
  ]);
});

test.each([
  ["30, 31", ["30", "31"], null],
  ["30,5; 31", ["30,5", "31"], null],
  ["32 cm, 33 cm, 31 cm", ["32", "33", "31"], null],
  ["26, 26", ["26", "26"], null],
  ["31.5 31.9 31.0", ["31.5", "31.9", "31.0"], null],
  ["31.5\n32", ["31.5", "32"], null],
  ["31.5/31.9/31.0", ["31.5", "31.9", "31.0"], null],
  ["31 / 32 / 33 cm", ["31", "32", "33"], null],
  // Two may be one of each leg.
  ["31.5/31.9", [], "jump-unread"],
  ["31.5 / 31.9", [], "jump-unread"],
  ["31.5 - 31.9", [], "jump-unread"],
  ["31.5 & 32", [], "jump-unread"],
  ["15 20", [], "jump-unread"],
  ["31.5 31.9x", [], "jump-unread"],
  ["15, 20", [], "jump-unread"],
  ["25, 31", [], "jump-unread"],
  ["30-31", [], "jump-unread"],
  ["30, 31 tired", [], "jump-unread"],
] as const)(
  "several heights in one cell are all read, or the cell is told: %s",
  (cell, heights, problem) => {
    const said = jumpCell(cell, []);
    expect([said.attempts, said.problem]).toEqual([heights.map((height) => ({ height })), problem]);
  },
);

test("two figures under a stack are none", () => {
  expect(jumpCell("30, 31", ["stack"]).problem).toBe("jump-unread");
});
