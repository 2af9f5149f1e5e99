import { mayDoOn, spellOn } from "../../../src/coaching/availability/spell-on";
import type { AvailabilitySpell } from "../../../src/coaching/record/availability-spell";

const spell = (from: number, until: number | null, mayDo: AvailabilitySpell["mayDo"], by = "") => ({
  row: from,
  athlete: "Dario Quell",
  from,
  until,
  mayDo,
  by,
  site: "",
  pain: null,
  note: "",
});

test("without a spell on the day an athlete may do everything", () => {
  expect(mayDoOn([], "Dario Quell", 100)).toBe("full");
  expect(mayDoOn([spell(10, 20, "out")], "Dario Quell", 21)).toBe("full");
  expect(mayDoOn([spell(10, 20, "out")], "Ilka Brandmoor", 15)).toBe("full");
});

test("first and last day belong to a spell, an open one goes on", () => {
  const spells = [spell(10, 20, "out")];
  expect([9, 10, 20].map((day) => mayDoOn(spells, "dario  quell", day))).toEqual([
    "full",
    "out",
    "out",
  ]);
  expect(mayDoOn([spell(10, null, "modified")], "Dario Quell", 500)).toBe("modified");
});

test("the spell that began last counts; of two on one day the more cautious", () => {
  expect(
    mayDoOn([spell(15, null, "cleared", "club physio"), spell(10, null, "out")], "Dario Quell", 16),
  ).toBe("cleared");
  expect(
    mayDoOn([spell(10, null, "out"), spell(15, null, "cleared", "club physio")], "Dario Quell", 16),
  ).toBe("cleared");
  expect(mayDoOn([spell(10, null, "full"), spell(15, null, "out")], "Dario Quell", 16)).toBe("out");
  expect(mayDoOn([spell(10, null, "out"), spell(10, null, "full")], "Dario Quell", 16)).toBe("out");
  expect(
    spellOn([spell(10, null, "full"), spell(10, null, "modified")], "Dario Quell", 16)!.mayDo,
  ).toBe("modified");
});

test("of what an athlete may do, out is more cautious than modified, cleared and full, in this order", () => {
  const cautious = ["out", "modified", "cleared", "full"] as const;
  for (const [at, more] of cautious.entries())
    for (const less of cautious.slice(at + 1))
      for (const pair of [[more, less] as const, [less, more] as const]) {
        const spells = pair.map((mayDo) => spell(10, null, mayDo));
        expect([pair, spellOn(spells, "Dario Quell", 16)!.mayDo]).toEqual([pair, more]);
      }
});

test("a clearance that names nobody clears nobody", () => {
  expect(mayDoOn([spell(10, null, "cleared", " ")], "Dario Quell", 16)).toBe("not cleared");
});

test("of two spells alike on one day the one written first is told", () => {
  const signed = spell(10, null, "cleared", "club physio");
  expect(spellOn([signed, spell(10, null, "cleared")], "Dario Quell", 16)).toBe(signed);
});
