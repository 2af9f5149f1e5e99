import { saysAbsent, saysAway, saysAwayNow } from "../../../src/coaching/availability/says-absent";

test.each([
  "out",
  "Out until Monday",
  "out – back w/c 1 June",
  "out with calf",
  "off sick",
  "off until 3/6",
  "back squat; out until 12/6",
  "back squat; off next week",
  "injured",
  "AWAY",
  "away, camp",
  "on holiday",
  "school trip",
  "WK-Reise",
  "exam week",
  "can’t train",
  "Urlaub bis 12.5.",
  "weg bis Mo",
  "nicht da",
  "fällt aus",
  "verletzt",
  "geblesseerd",
  " out ",
])("“%s” in place of something done says that somebody was not there", (words) => {
  expect(saysAbsent(words)).toBe(true);
});

test.each([
  "out and back",
  "out of the hole slow",
  "knees out",
  "off",
  "back off next set",
  "rest",
  "bike 60 min",
  "optional",
  "Ferienwohnung",
  "campus",
])("“%s” says nothing of an absence", (words) => {
  expect(saysAbsent(words)).toBe(false);
  expect(saysAway(words)).toBe(false);
});

test.each([
  "away until 12/6",
  "good. Away 1–12 June",
  "holiday from Monday",
  "off next week",
  "camp next week",
  "is out until Friday",
  "Urlaub ab Montag",
  "Ab 18.5. eine Woche weg",
  "next week away",
  "out – back w/c 1 June",
  " out until Friday",
])("“%s” beside something done names when somebody will be away", (words) => {
  expect(saysAway(words)).toBe(true);
});

test.each([
  "bar drifted away from me",
  "next rep away from rack",
  "knees out until lockout",
  "injured",
  "holiday",
  "camp legs",
])("“%s” beside something done is no absence to come", (words) => {
  expect(saysAway(words)).toBe(false);
});

test.each([
  "away",
  "Out",
  "currently injured",
  "injured (calf)",
  "on holiday",
  "ill",
  "injury",
  "Urlaub bis 12.6.",
  "im Urlaub",
  "out until 12 June",
  "prefers mornings; away until 12 June",
])("“%s” beside no day says that somebody is away now", (words) => {
  expect(saysAwayNow(words)).toBe(true);
});

test.each([
  "back from injury",
  "injury, left calf 2023",
  "physio: Anna",
  "old calf strain",
  "works out alone",
  "out and back runs only",
  "off days are Fridays",
  "trip hazard",
  "",
])("“%s” beside no day is no absence of now", (words) => {
  expect(saysAwayNow(words)).toBe(false);
});
