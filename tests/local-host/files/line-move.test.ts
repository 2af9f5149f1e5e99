import fc from "fast-check";
import { lineMove, placeOf, stretchOf } from "../../../src/local-host/files/xlsx/line-move";

const lines = (text: string) => text.split("");
/** New places of the old lines as digits, "-" for one that is gone. */
const moved = (before: string, after: string) =>
  lines(before)
    .map(
      (_, at) =>
        placeOf(
          lineMove(
            lines(before).map((one) => one.trim()),
            lines(after).map((one) => one.trim()),
          ),
          at,
        ) ?? "-",
    )
    .join("");

test.each([
  ["a line put in", "abcd", "abxcd", "0134"],
  ["a line put in at the top", "abcd", "xabcd", "1234"],
  ["an empty line put in", "abcd", "ab cd", "0134"],
  ["a line taken out", "abcd", "acd", "0-12"],
  ["a line taken out and another changed", "abcde", "acxe", "0-123"],
  ["a line put in, another taken out", "abcdef", "axbcef", "023-45"],
  ["a line put in among lines that are all alike", "aaab", "aaaab", "0124"],
  ["a line put in before lines that are all alike", "abb", "axbb", "023"],
  ["lines changed", "abcd", "axyd", "0123"],
  ["lines added below", "abcd", "abcdef", "0123"],
  ["lines emptied at the end", "abcd", "ab", "0123"],
  ["lines emptied in the middle", "abcd", "a  d", "0123"],
  ["all lines emptied", "abcd", "", "0123"],
  ["other lines altogether", "abcd", "wxyz", "0123"],
])("%s: %s, now %s", (_, before, after, places) => {
  expect(moved(before, after)).toBe(places);
});

test("lines beyond the last go on with it", () => {
  const move = lineMove(lines("abcd"), lines("acd"));
  expect(placeOf(move, 9)).toBe(8);
  expect(stretchOf(move, 1, 1, 100)).toBeNull();
  expect(stretchOf(move, 0, 99, 100)).toEqual([0, 99]);
  expect(stretchOf(move, 1, 50, 100)).toEqual([1, 49]);
});

test("whatever is put in and taken out among lines of their own, each is found where it went", () => {
  fc.assert(
    fc.property(
      fc.array(fc.constantFrom("keep", "take out", "put in"), { maxLength: 30 }),
      (steps) => {
        const before = steps.flatMap((step, at) => (step === "put in" ? [] : [`old ${at}`]));
        const after = steps.flatMap((step, at) =>
          step === "take out" ? [] : [step === "keep" ? `old ${at}` : `new ${at}`],
        );
        // A last line that stays: what is taken out below all others is taken for emptied.
        before.push("last");
        after.push("last");
        const move = lineMove(before, after);
        before.forEach((line, at) => {
          const place = after.indexOf(line);
          if (place >= 0) expect(placeOf(move, at)).toBe(place);
        });
      },
    ),
  );
});
