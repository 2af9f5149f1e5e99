import { readTable } from "../../../src/rows/read-table";

// Words a coach writes of what an athlete may do; which of four they mean is common practice, no source.
test.each([
  ["full", "Full training; fully fit; available; OK"],
  ["modified", "Modified training; partial; limited; restricted"],
  ["out", "Injured; ill; unfit; not fit; no training; sick"],
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
