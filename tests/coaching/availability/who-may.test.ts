import { isUnder18, whoMay } from "../../../src/coaching/availability/who-may";
import { dayFromIso } from "../../../src/coaching/calendar/day";
import type { Athlete } from "../../../src/coaching/record/athlete";
import type { AvailabilitySpell } from "../../../src/coaching/record/availability-spell";
import { jossModified } from "./joss-modified";

const day = (iso: string) => dayFromIso(iso)!;
const bea: Athlete = {
  row: 2,
  athlete: "Bea Lindqvale",
  group: "track",
  event: "1500 m",
  experience: "novice",
  birthYear: 2009,
  under18: null,
  supervisor: "S. Marchbank",
  supervisorFrom: day("2026-05-05"),
  baselineFrom: null,
  baselineTo: null,
  sessionsAWeek: 2,
  notes: "",
};
const spell = (over: Partial<AvailabilitySpell>) => jossModified(100, over);
const may = (...spells: AvailabilitySpell[]) => whoMay(null, "joss whitterby", spells, 110);

test("under 18 nothing is proposed before the day the supervisor is named, and all after it", () => {
  expect(whoMay(bea, bea.athlete, [], day("2026-05-04")).not).toBe("under-18-no-supervisor");
  expect(whoMay(bea, bea.athlete, [], day("2026-05-05")).not).toBeNull();
  expect(whoMay({ ...bea, supervisor: " " }, bea.athlete, [], day("2026-06-01")).not).toBe(
    "under-18-no-supervisor",
  );
});

test("a birth year alone leaves an athlete under 18 until the year of that birthday is over", () => {
  expect(isUnder18(bea, day("2027-12-31"))).toBe(true);
  expect(isUnder18(bea, day("2028-01-01"))).toBe(false);
  expect(isUnder18({ ...bea, under18: false }, day("2026-05-04"))).toBe(false);
  expect(isUnder18({ ...bea, birthYear: null }, day("2026-05-04"))).toBe(false);
});

test("out, and a clearance that nobody signed, get nothing; a signed one does", () => {
  expect(may(spell({ mayDo: "out" })).not).toBe("out");
  expect(may(spell({ mayDo: "cleared", by: " " })).not).toBe("not-cleared");
  expect(may(spell({ mayDo: "cleared" }))).toMatchObject({ not: null, mayDo: "cleared" });
});

test.each(["Achilles", "left calf", "both calves"])(
  "%s takes jumps out, the lift stays",
  (site) => {
    expect(may(spell({ site, pain: 3 }))).toMatchObject({ not: null, noJumps: true, site });
  },
);

test.each([
  "bone of the foot",
  "both heel bones",
  "shin",
  "Shins",
  "stress fracture",
  "two stress fractures",
  "pain at night",
  "worse most nights",
  "chest",
  "dizzy",
  "dizziness",
  "limp",
  "limping",
  "limps after runs",
  "femur",
  "left tibia",
  "tibial",
  "pregnant",
  "pregnancy, 20th week",
  "schwanger",
])("%s stops everything", (site) => {
  expect(may(spell({ site, pain: 2 })).not).toBe("see-a-doctor");
});

test.each(["collarbone", "backbones", "machine", "orchestra", "blimp", "fortnight", "chestnut"])(
  "%s stops nothing",
  (note) => {
    expect(may(spell({ note })).not).toBeNull();
  },
);

test.each(["Dr S. Vane", "physio, R. Ames", "team doctor", "Ärztin", "Physiotherapeutin Lund"])(
  "what %s allows of a shin without pain is planned, without jumps and off that leg",
  (by) => {
    const signed = { site: "shin", note: "stress fracture, gym only", by };
    expect(may(spell({ ...signed, pain: null }))).toMatchObject({
      not: null,
      mayDo: "modified",
      noJumps: true,
      limits: ["leg"],
    });
    expect(may(spell({ ...signed, pain: 0 })).not).toBeNull();
  },
);

test("in pregnancy what a doctor or midwife has signed is done, without jumps", () => {
  const signed = spell({ note: "pregnant", by: "Midwife A. Lorne", pain: null });
  expect(may(signed)).toMatchObject({ not: null, noJumps: true });
  expect(may({ ...signed, by: "MG" }).not).toBe("see-a-doctor");
});

test("pain beside the signature, a coach’s own, or another spell that nobody licensed signed stops all the same", () => {
  const signed = spell({ site: "shin", by: "Dr S. Vane", pain: null });
  expect(may({ ...signed, pain: 1 }).not).toBe("see-a-doctor");
  for (const by of ["MG", "", "Drake", "Physalis"])
    expect([by, may({ ...signed, by }).not]).toEqual([by, "see-a-doctor"]);
  expect(may({ ...signed, mayDo: "full", pain: 2 }).not).toBe("see-a-doctor");
  expect(may(signed, spell({ from: 105, site: "chest", by: "MG" })).not).toBe("see-a-doctor");
  // Jumps stay out where the words name no part of the body.
  expect(may({ ...signed, site: "", note: "stress fracture" })).toMatchObject({
    not: null,
    noJumps: true,
  });
});

test("what ends a session is read though another spell's note stands before it", () => {
  const knee = spell({ site: "knee", note: "stiff" });
  expect(may(knee, spell({ from: 105, site: "shin", pain: 2 })).not).toBe("see-a-doctor");
});

test("night shifts are not night pain", () => {
  for (const note of ["night shifts this month", "night-shift", "on nightshift", "night - shift"])
    expect([note, may(spell({ note })).not]).toEqual([note, null]);
});

test("pain written beside `full` still counts; a site without pain does not", () => {
  expect(may(spell({ mayDo: "full", site: "calf", pain: 2 })).noJumps).toBe(true);
  expect(may(spell({ mayDo: "full", site: "calf", pain: 0 })).noJumps).toBe(false);
});

test("a later spell about something else does not heal a site; a later clearance does", () => {
  const achilles = spell({ site: "Achilles", pain: 3 });
  const away = spell({ from: 105, note: "away, hotel gym" });
  expect(may(achilles, away)).toMatchObject({ noJumps: true, site: "Achilles" });
  for (const mayDo of ["cleared", "full"] as const)
    expect(may(achilles, spell({ from: 105, mayDo })).noJumps).toBe(false);
  expect(may({ ...achilles, until: 109 }, away).noJumps).toBe(false);
});

test("a site limits its part of the body when modified, or from a pain of four on", () => {
  const limits = (over: Partial<AvailabilitySpell>) => may(spell({ site: "knee", ...over })).limits;
  expect(limits({ pain: null })).toEqual(["leg"]);
  expect(limits({ pain: 1 })).toEqual(["leg"]);
  expect(limits({ mayDo: "full", pain: 3 })).toEqual([]);
  expect(limits({ mayDo: "full", pain: 4 })).toEqual(["leg"]);
  expect(limits({ mayDo: "full", pain: null })).toEqual([]);
});

test("whatever limits but an arm takes jumps out; a note may do so too", () => {
  const noJumps = (site: string, note = "") => may(spell({ site, note })).noJumps;
  expect(["knee", "foot", "lower back", "wrist", ""].map((site) => noJumps(site))).toEqual([
    true,
    true,
    true,
    false,
    false,
  ]);
  const notes = [
    "no jump today",
    "no jumps",
    "no jumping this week",
    "No hops",
    "no plyometrics",
    "no plyos",
    "no hopping",
    "jumps fine",
  ];
  expect(notes.map((note) => noJumps("", note))).toEqual([...Array(7).fill(true), false]);
});

test("a spell's last day still counts, the day before it began does not", () => {
  const achilles = spell({ site: "Achilles", pain: 3 });
  const away = spell({ from: 105, note: "away, hotel gym" });
  expect(may({ ...achilles, until: 110 }, away).noJumps).toBe(true);
  expect(may({ ...achilles, from: 111 }, away).noJumps).toBe(false);
  expect(may({ ...achilles, from: 110 }, away).noJumps).toBe(true);
});

test("sites are told once each, in the order written, those of others and without pain not at all", () => {
  const told = may(
    spell({ site: "knee" }),
    spell({ site: "wrist", pain: 2 }),
    spell({ site: "knee", from: 101 }),
    spell({ site: "hip", mayDo: "full", pain: 0 }),
    spell({ site: "neck", athlete: "Dario Quell" }),
    spell({ site: "" }),
  );
  expect(told.site).toBe("knee, wrist");
  expect(may().site).toBe("");
});

// Coaches who write their headings in German write their sites so, too.
test.each([
  "Schienbein links",
  "Schienbeinschmerz",
  "Fersenknochen",
  "Stressfraktur Fuß",
  "Ermüdungsbruch",
  "Knie, auch nachts",
  "Brust",
  "Schwindel",
  "hinkt",
  "humpelt",
])("%s stops everything", (site) => {
  expect(may(spell({ site, pain: 2 })).not).toBe("see-a-doctor");
});

test.each([
  ["Achillessehne rechts", ["foot"]],
  ["Wade", ["foot"]],
  ["linkes Knie", ["leg"]],
  ["Oberschenkel hinten", ["leg"]],
  ["Rücken", ["trunk"]],
  ["Schulter", ["arm"]],
])("%s limits what it should, and jumps give way but for an arm", (site, limits) => {
  const given = may(spell({ site, pain: 5 }));
  expect(given).toMatchObject({ not: null, limits, noJumps: site !== "Schulter" });
});

test("a night shift and a knee without pain stop nothing; jumps forbidden in words are", () => {
  expect(may(spell({ site: "Knie", note: "Nachtschicht", pain: 1 })).not).toBeNull();
  const calm = { mayDo: "full" as const, pain: 1, site: "" };
  expect(may(spell({ ...calm, note: "keine Sprünge" })).noJumps).toBe(true);
  expect(may(spell({ ...calm, note: "alles gut" })).noJumps).toBe(false);
});

test("jumps that a note forbids stay out while its spell lasts, though somebody has cleared it", () => {
  const note = "lifting in grades, no jumps until 30/3";
  const cleared = (over: Partial<AvailabilitySpell> = {}) =>
    spell({ mayDo: "cleared", by: "a physio", site: "shin", pain: 0, until: 110, note, ...over });
  expect(may(cleared())).toMatchObject({ not: null, noJumps: true, site: "shin" });
  expect(may(cleared({ mayDo: "full" })).noJumps).toBe(true);
  expect(may(cleared({ note: "lifting in grades" })).noJumps).toBe(false);
  // The next spell that frees has the last word.
  expect(may(cleared(), spell({ from: 105, mayDo: "full" })).noJumps).toBe(false);
  expect(may(cleared({ until: 109 })).noJumps).toBe(false);
  const said = (words: string) => may(cleared({ note: words })).noJumps;
  expect(["without impact", "avoid box jumps", "no drop jumps yet"].map(said)).toEqual(
    Array(3).fill(true),
  );
  expect(["no jump restriction", "no jumping limits", "jumps allowed"].map(said)).toEqual(
    Array(3).fill(false),
  );
});
