import fc from "fast-check";
import { accept, refuse } from "../../../src/outcome";
import { cellAddress } from "../../../src/rows/value/cell-address";
import { dayFromText } from "../../../src/rows/value/day-text";
import { minuteOfDay } from "../../../src/rows/value/minute-of-day";
import { numberFromText } from "../../../src/rows/value/number-text";
import { speedList } from "../../../src/rows/value/speed-list";
import { readStack } from "../../../src/rows/value/stack";
import { inBase, unitOf } from "../../../src/rows/value/units";

test("a stack reads from the bottom up, with × or x, spaces and kg", () => {
  const five = [15, 15, 15, 15, 15];
  expect(readStack("5x15+5")).toEqual(accept([...five, 5]));
  expect(readStack("5×15 + 5 kg")).toEqual(accept([...five, 5]));
  expect(readStack("2x20+10+5")).toEqual(accept([20, 20, 10, 5]));
  expect(readStack(20)).toEqual(accept([20]));
  expect(readStack("1x1,25")).toEqual(accept([1.25]));
});

test("a stack that could be a mass before its count, or is no stack, is refused", () => {
  expect(readStack("15x5")).toEqual(refuse("stack-count", { found: "15x5", count: 15 }));
  for (const found of ["", "box", "5x", "5x15+", "0x5", "3x200", "5x15*"])
    expect(readStack(found)).toEqual(refuse("stack-unreadable", { found }));
});

test("every stack written out is read back", () => {
  const part = fc.tuple(fc.integer({ min: 1, max: 6 }), fc.constantFrom(1.25, 2.5, 5, 10, 15, 20));
  fc.assert(
    fc.property(fc.array(part, { minLength: 1, maxLength: 4 }), (parts) => {
      const written = parts
        .map(([count, mass]) => (count === 1 ? `${mass}` : `${count}x${mass}`))
        .join("+");
      const masses = parts.flatMap(([count, mass]) => Array<number>(count).fill(mass));
      expect(readStack(written)).toEqual(accept(masses));
    }),
  );
});

test("decimal commas and points, grouped thousands, and doubt", () => {
  const read = (text: string) => numberFromText(text);
  expect(read("0,62")?.value).toBe(0.62);
  expect(read(".62")?.value).toBe(0.62);
  expect(read("1.234,5")?.value).toBe(1234.5);
  expect(read("1,234.5")?.value).toBe(1234.5);
  expect(read("1 250")?.value).toBe(1250);
  expect(read("1,204")).toEqual({ value: 1.204, thousands: 1204, unsure: false });
  expect(read("0.58?")).toEqual({ value: 0.58, thousands: null, unsure: true });
  expect(read("−3")?.value).toBe(-3);
  for (const none of ["0..70", "", "x", "6+6", "1,2,3", "12e3"]) expect(read(none)).toBeNull();
});

test("every number written with a comma is the number", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 99_999 }), (n) => {
      const text = (n / 100).toFixed(2);
      expect(numberFromText(text.replace(".", ","))?.value).toBe(n / 100);
    }),
  );
});

// NIST SP 811 (2008), appendix B.8: pound 4.535 924 E−01 kg, inch 2.54 E+00 cm, mile 1.609 344 E+00 km.
test("units turn exactly", () => {
  const turn = (value: number, word: string) => inBase(value, unitOf(word)!);
  expect(turn(1, "lb")).toBeCloseTo(0.4535924, 7);
  expect(turn(1, "inches")).toBe(2.54);
  expect(turn(1, "mi")).toBe(1.609344);
  expect(turn(182, "ms")).toBe(0.182);
  expect(turn(62, "cm/s")).toBe(0.62);
  expect(unitOf("stone")).toBeNull();
});

test("speeds in one cell", () => {
  expect(speedList("0.62 0.60 0.57").speeds).toEqual([0.62, 0.6, 0.57]);
  expect(speedList("0,62/0,61/0,61").speeds).toEqual([0.62, 0.61, 0.61]);
  expect(speedList("0,67 / 0,66 / ").speeds).toEqual([0.67, 0.66, null]);
  expect(speedList(".62, .60, .57").speeds).toEqual([0.62, 0.6, 0.57]);
  expect(speedList(".48 .46 - -").speeds).toEqual([0.48, 0.46, null, null]);
  expect(speedList("0.62 0..60").unread).toEqual(["0..60"]);
  expect(speedList("0.62 0.60?").unsure).toEqual(["0.60?"]);
});

test("days in words and numbers", () => {
  expect(dayFromText("Tue 26 May – pm")).toMatchObject({ month: 5, date: 26, weekday: 1 });
  expect(dayFromText("2/6 tues")).toMatchObject({ pair: [2, 6], weekday: 1 });
  expect(dayFromText("05.05.")).toMatchObject({ pair: [5, 5], dotted: true, year: null });
  expect(dayFromText("12. Mai 2026")).toMatchObject({ month: 5, date: 12, year: 2026 });
  expect(dayFromText("2026-05-12 18:05")).toMatchObject({ year: 2026, minute: 1085 });
  for (const none of ["1.08", "2-3", "squat", "5x5", "", "20 min"])
    expect(dayFromText(none)).toBeNull();
});

test("times of day", () => {
  expect(["18:00", "6 pm", "18h30", "18.30 Uhr", 0.75].map(minuteOfDay)).toEqual([
    1080, 1080, 1110, 1110, 1080,
  ]);
  expect(minuteOfDay(new Date(1899, 11, 30, 18, 5))).toBe(1085);
  for (const none of ["25:00", "soon", "18", "", 18, null]) expect(minuteOfDay(none)).toBeNull();
});

test("addresses past Z", () => {
  expect([
    cellAddress(1, 1),
    cellAddress(33, 3),
    cellAddress(7, 26),
    cellAddress(7, 27),
    cellAddress(1, 703),
  ]).toEqual(["A1", "C33", "Z7", "AA7", "AAA1"]);
});
