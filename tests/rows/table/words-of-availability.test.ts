import { readTable } from "../../../src/rows/read-table";

// Words a coach writes of what an athlete may do; which of four they mean is common practice, no source.
test.each([
  ["full", "Full training; fully fit; available; OK"],
  ["modified", "Modified training; partial; limited; restricted"],
  ["out", "Injured; ill; unfit; not fit; no training; sick; away; on holiday; Urlaub"],
  ["cleared", "Cleared; released"],
])("%s is meant by %s", (mayDo, words) => {
  for (const word of words.split("; ")) {
    const { records, issues } = readTable("Availability", [
      ["Athlete", "From", "Status"],
      ["Ilka Brandmoor", "2026-05-12", word],
    ]);
    expect([word, records.map((one) => one.mayDo), issues]).toEqual([word, [mayDo], []]);
  }
});

test.each(["rehab", "return to play", "no running"])(
  "“%s” could mean more than one and is asked about",
  (word) => {
    const { records, issues } = readTable("Availability", [
      ["Athlete", "From", "Status"],
      ["Ilka Brandmoor", "2026-05-12", word],
    ]);
    expect([records, issues.map(({ code }) => code)]).toEqual([[], ["word-unknown"]]);
  },
);

test("a first word that limits counts, and what is said after it is the spell's note", () => {
  const read = (...words: readonly string[]) =>
    readTable("Availability", [
      ["Athlete", "From", "Status", "Comment"],
      ...words.map((word) => ["Ilka Brandmoor", "2026-05-12", word, "by the physio"]),
    ]);
  const { records, issues } = read(
    "Out until cleared",
    "Limited - no plyos",
    "modified (no jumps)",
    "limited (no jumps) until Friday",
    "ill: fever",
    "out",
  );
  expect(issues).toEqual([]);
  expect(records.map(({ mayDo, note }) => [mayDo, note])).toEqual([
    ["out", "until cleared; by the physio"],
    ["modified", "no plyos; by the physio"],
    ["modified", "no jumps; by the physio"],
    ["modified", "no jumps until Friday; by the physio"],
    ["out", "fever; by the physio"],
    ["out", "by the physio"],
  ]);
});

test.each([
  "full from Monday",
  "cleared - by nobody",
  "no - jumps",
  "out there somewhere",
  "OK, no jumps",
])("“%s” frees nobody and is asked about", (word) => {
  const { records, issues } = readTable("Availability", [
    ["Athlete", "From", "Status"],
    ["Ilka Brandmoor", "2026-05-12", word],
  ]);
  expect([records, issues.map(({ code }) => code)]).toEqual([[], ["word-unknown"]]);
});
