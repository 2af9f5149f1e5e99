import type { WeekSession } from "../../src/actions/messages";
import type { Event } from "../../src/sidebar/event";
import { turnFields } from "../../src/sidebar/view/turn-fields";

const athlete = "Ilka Brandmoor";
const fieldsOf = (turn: string, changes: Parameters<typeof turnFields>[0]["state"]["changes"]) => {
  const said: Event[] = [];
  const fields = turnFields({
    line: { athlete, blocks: ["5×5", "3×5"] },
    session: { turn, dayWords: "Thu 2 Jul" } as WeekSession,
    state: { changes, shown: changes.slice(0, 1) },
    dispatch: (event) => said.push(event),
  });
  return { ...fields, said };
};

test("a change of another turn bears its name and its day, and takes nothing from the first turn's", () => {
  const changes = [
    { athlete, loadKg: 80 },
    { athlete, turn: "front squat", loadKg: 60 },
  ];
  const other = fieldsOf("front squat", changes);
  other.change({ block: "3×5" });
  expect(other.said).toEqual([
    { type: "changed", change: { athlete, turn: "front squat", block: "3×5" } },
  ]);
  expect([other.asked, other.wished, other.named("Block")]).toEqual([
    { loadKg: 60 },
    { loadKg: 60 },
    "Block, Thu 2 Jul",
  ]);
  const first = fieldsOf("", changes);
  first.change({ loadKg: 82.5 });
  expect(first.said).toEqual([{ type: "changed", change: { athlete, loadKg: 82.5 } }]);
  // The script has shown this one.
  expect([first.asked, first.wished, first.named("Block")]).toEqual([{ loadKg: 80 }, {}, "Block"]);
});
