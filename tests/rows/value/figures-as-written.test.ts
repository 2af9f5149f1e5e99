import { numberFromText } from "../../../src/rows/value/number-text";
import { speedList, withPiece } from "../../../src/rows/value/speed-list";
import { readStack } from "../../../src/rows/value/stack";
import { inBase, unitOf, unitsLike } from "../../../src/rows/value/units";

test.each([
  ["62", 62],
  ["+3", 3],
  ["–3,5", -3.5],
  [",5", 0.5],
  [".625", 0.625],
  ["1.234.567", 1_234_567],
  ["1,234,567.8", 1_234_567.8],
  ["12.345,6", 12_345.6],
  ["1 250,5", 1250.5],
  ["1\u00a0250", 1250],
  ["1\u2009250", 1250],
  ["1'250", 1250],
  ["1’250.5", 1250.5],
  ["  62 ", 62],
])("“%s” is a number without doubt: %p", (text, value) => {
  expect(numberFromText(text)).toEqual({ value, thousands: null, unsure: false });
});

test.each([
  ["1.250", 1.25, 1250],
  ["-12,500", -12.5, -12_500],
  ["123.456", 123.456, 123_456],
])("“%s” may be %p or group thousands: %p", (text, value, thousands) => {
  expect(numberFromText(text)).toEqual({ value, thousands, unsure: false });
});

test.each(["0,125", "1234,567", "1,2345"])("“%s” groups no thousands", (text) => {
  expect(numberFromText(text)?.thousands).toBeNull();
});

test.each(["85?", "85 ??", "~85", "≈ 85", "ca. 85", "CA 85", "circa 85", "about 85", "abt. 85"])(
  "“%s” is a number the coach was not sure of",
  (text) => {
    expect(numberFromText(text)).toEqual({ value: 85, thousands: null, unsure: true });
  },
);

test.each([
  "5.",
  "1,234,5",
  "1.234.56",
  "1234.567,8",
  "1,2345.6",
  "1 250 5",
  "a1",
  "62 a",
  "x1,250.5",
  "1,250.5x",
  "some 85",
  "8?5",
  "8~5",
  "1\u00a05",
  "orca 85",
  "1 ca 250?",
])("“%s” is no number", (text) => {
  expect(numberFromText(text)).toBeNull();
});

test("more digits than a number can hold are no number", () => {
  expect(numberFromText(`1${" 000".repeat(103)}`)).toBeNull();
});

test.each([
  ["0.62;0.60|0.57", [0.62, 0.6, 0.57], ["0.62", "0.60", "0.57"]],
  ["0.62 0.60 m/s", [0.62, 0.6], ["0.62", "0.60"]],
  ["62 60 cm/s", [62, 60], ["62", "60"]],
  ["0,62/0,60 M/S", [0.62, 0.6], ["0,62", "0,60"]],
  ["0,62, 0,60", [0.62, 0.6], ["0,62", "0,60"]],
  ["0.62,0.60", [0.62, 0.6], ["0.62", "0.60"]],
  ["0.62, 0.60 / 0.58", [0.62, 0.6, 0.58], ["0.62", "0.60", "0.58"]],
  ["0,62 ,60 / 0,58", [0.62, 0.6, 0.58], ["0,62", ",60", "0,58"]],
  ["  0.62  0.60 ", [0.62, 0.6], ["0.62", "0.60"]],
  ["0.62 / 0.60 ", [0.62, 0.6], ["0.62", "0.60"]],
  ["0.62 /", [0.62, null], ["0.62", ""]],
  ["0.62 na × ? —", [0.62, null, null, null, null], ["0.62", "na", "×", "?", "—"]],
  ["62 60", [62, 60], ["62", "60"]],
  ["6 1234", [6, 1234], ["6", "1234"]],
  ["0.62 0.60 m/s ", [0.62, 0.6], ["0.62", "0.60"]],
  ["0.62  0.60 / 0.58", [0.62, 0.6, 0.58], ["0.62", "0.60", "0.58"]],
])("speeds “%s” are %p", (text, speeds, pieces) => {
  expect(speedList(text)).toEqual({ speeds, pieces, unread: [], unsure: [] });
});

test("pieces in doubt and pieces that are no speed are kept as written, and stand empty", () => {
  expect(speedList("0.62 0.60?? fast 12345 0.12345")).toEqual({
    speeds: [0.62, null, null, null, null],
    pieces: ["0.62", "0.60??", "fast", "12345", "0.12345"],
    unread: ["fast", "12345", "0.12345"],
    unsure: ["0.60??"],
  });
  expect(speedList("0.62 naa -- a0.60").unread).toEqual(["naa", "--", "a0.60"]);
  expect(speedList("0.62 fast / 0.60").unread).toEqual(["0.62 fast"]);
  expect(speedList("0.62 m/s 0.60").unread).toEqual(["0.62 m", "s 0.60"]);
});

test.each([
  ["0.62 62 0.60", "62", 0.6, "0.62 0.6 0.60"],
  ["62 0.61", "62", 0.62, "0.62 0.61"],
  ["0.62,62;0.60", "62", 0.6, "0.62,0.6;0.60"],
  ["0.61|62", "62", 0.62, "0.61|0.62"],
  ["0,61 62", "62", 0.62, "0,61 0,62"],
  ["0,61, 62, 0,60", "62", 0.62, "0,61, 0,62, 0,60"],
  ["0,62/62", "62", 0.6, "0,62/0,6"],
  ["61 62", "62", 0.62, "61 0.62"],
  ["61,62 0.60", "62", 0.62, "61,0.62 0.60"],
  ["0.6.2 0.60", "0.6.2", 0.62, "0.62 0.60"],
  ["0.61 620 62", "62", 0.62, "0.61 620 0.62"],
  ["0,61 620 62", "62", 0.62, "0,61 620 0,62"],
])("in “%s” the piece “%s” becomes %p and nothing else changes", (text, piece, value, mended) => {
  expect(withPiece(text, piece, value)).toBe(mended);
});

test("a piece that stands nowhere by itself is not mended", () => {
  expect(withPiece("0,62 0,60", "62", 0.62)).toBeNull();
  expect(withPiece("0.62 0.60", "62", 0.62)).toBeNull();
  expect(withPiece("0.62 0960", "0.60", 0.6)).toBeNull();
});

test("stacks at the edge: the heaviest plate, a dozen equal ones, forty plates", () => {
  const many = (text: string) => {
    const stack = readStack(text);
    return stack.ok ? stack.value.length : stack.refusal.code;
  };
  expect(many("12 X 50")).toBe(12);
  expect(many("1x51")).toBe("stack-unreadable");
  expect(many("13x5")).toBe("stack-count");
  expect(many("12x5+12*5+12x5+4x5")).toBe(40);
  expect(many("12x5+12x5+12x5+5x5")).toBe("stack-count");
  expect(many("15 KG + 5kg")).toBe(2);
  expect(readStack(" box ")).toMatchObject({ refusal: { facts: { found: "box" } } });
  expect(readStack(null)).toMatchObject({ refusal: { facts: { found: "" } } });
  for (const none of ["0", "2x0", "5 5", "5kgs", "x5", "+5", "a5", "1.255", null, false] as never[])
    expect(many(none)).toBe("stack-unreadable");
});

test("units by any of their words, and the units that might stand in their place", () => {
  expect([" KG ", "Pounds", "″", "stunden", "m s-1"].map((word) => unitOf(word)?.name)).toEqual([
    "kg",
    "lb",
    "in",
    "h",
    "m/s",
  ]);
  expect(unitsLike("lbs")).toEqual(["kg", "lb"]);
  expect(unitsLike("cm/s")).toEqual(["m/s", "cm/s", "mm/s"]);
  expect(unitsLike("stone")).toEqual([]);
  expect(inBase(250, unitOf("mm")!)).toBe(25);
});

test("a list of speeds or a stack longer than anybody writes is not taken apart", () => {
  const speeds = (letters: number) => speedList("0.6 ".repeat(letters / 4)).speeds.length;
  expect([speeds(1000), speeds(1004)]).toEqual([250, 1]);
  const long = `${"0.6 ".repeat(250)}0.6 `;
  expect(speedList(long)).toEqual({ speeds: [null], pieces: [long], unread: [long], unsure: [] });
  expect(readStack(`5+${"5".padStart(498)}`).ok).toBe(true);
  expect(readStack(`5+${"5".padStart(499)}`)).toMatchObject({
    refusal: { code: "stack-unreadable", facts: { found: expect.stringMatching(/^5\+/) } },
  });
});

test("what is longer than any number is none", () => {
  expect(numberFromText(`${"0".repeat(99)}5`)).toMatchObject({ value: 5 });
  expect(numberFromText(`${"0".repeat(100)}5`)).toBeNull();
});
