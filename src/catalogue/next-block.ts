import { blockFromText, blockText } from "../coaching/blocks/block";
import { nextBlock } from "../coaching/blocks/next-block";
import { accept, refuse } from "../outcome";
import { foundText } from "../rows/value/found-text";
import { nextBlockWords } from "../words/next-block";
import { elementwise, isBlank } from "./arguments/elementwise";
import { massCell, yesNoCell } from "./arguments/number-cell";
import type { SheetFunction } from "./sheet-function";

export const nextBlockFunction: SheetFunction = {
  name: "NEXT_BLOCK",
  summary:
    "Next block of the rotation 5×5, 3×5, 5×3, 3×3 and its load, gated by movement quality, volume and speed in that order.",
  parameters: [
    { name: "block", help: "Present block, such as 5x5. A cell or a column." },
    { name: "load", help: "Present load on the bar, kg." },
    { name: "moved_well", help: "Movement quality, yes or no; blank holds." },
    { name: "volume_done", help: "All sets and repetitions done, yes or no; blank holds." },
    { name: "held_speed", help: "Speed held over the sets, yes or no; blank holds." },
    {
      name: "strength",
      help: "Strength estimate, kg, best its low end; blank when there is none.",
    },
    { name: "step", help: "Smallest change of load on the bar, kg." },
  ],
  results: ["next block", "load (kg)", "reason"],
  examples: [
    {
      formula: '=NEXT_BLOCK("5x5", 70, "y", "y", "y", 100, 2.5)',
      args: ["5x5", 70, "y", "y", "y", 100, 2.5],
      result: [
        [
          "3×5",
          72.5,
          "moved well, volume done, speed held: one step on (about 6.4 repetitions in reserve)",
        ],
      ],
    },
  ],
  compute: ([block, load, moved, volume, speed, strength, step]) =>
    elementwise(
      [
        { name: "block", cells: block, needed: true },
        { name: "load", cells: load, needed: true },
        { name: "moved_well", cells: moved },
        { name: "volume_done", cells: volume },
        { name: "held_speed", cells: speed },
        { name: "strength", cells: strength },
        { name: "step", cells: step },
      ],
      (blockCell, loadCell, movedCell, volumeCell, speedCell, strengthCell, stepCell) => {
        if (isBlank(blockCell)) return refuse("argument-blank", { name: "block" });
        const present = blockFromText(foundText(blockCell));
        if (!present.ok) return present;
        const loadKg = massCell(loadCell, "load");
        if (!loadKg.ok) return loadKg;
        const movedWell = yesNoCell(movedCell, "moved_well");
        if (!movedWell.ok) return movedWell;
        const volumeDone = yesNoCell(volumeCell, "volume_done");
        if (!volumeDone.ok) return volumeDone;
        const heldSpeed = yesNoCell(speedCell, "held_speed");
        if (!heldSpeed.ok) return heldSpeed;
        const strengthKg = isBlank(strengthCell)
          ? accept(null)
          : massCell(strengthCell, "strength");
        if (!strengthKg.ok) return strengthKg;
        const stepKg = massCell(stepCell, "step");
        if (!stepKg.ok) return stepKg;
        const next = nextBlock({
          block: present.value,
          loadKg: loadKg.value,
          movedWell: movedWell.value,
          volumeDone: volumeDone.value,
          heldSpeed: heldSpeed.value,
          strengthKg: strengthKg.value,
          stepKg: stepKg.value,
        });
        if (!next.ok) return next;
        return accept([blockText(next.value.block), next.value.loadKg, nextBlockWords(next.value)]);
      },
    ),
};
