import type { RunKind } from "../../coaching/record/run";
import type { Column } from "../header/column";
import { runCell, type WrittenRun } from "../layout/shorthand/run-cell";
import type { CellReader, TableView } from "../table-view";
import { runKinds } from "./run-kinds";

/** The kind of run that a longer text names, "10k easy", "8x1k"; null when it names none. */
export function runKindIn(words: string): RunKind | null {
  const run = written(words) ?? written(words, "minutes");
  return runKinds.get(run?.kind ?? "") ?? null;
}

/**
 * Reader of what a cell of kinds says besides: "10k easy" has a distance, too; null where it says no
 * more. Reports `run-figure-beside` at a number of nobody knows what.
 */
export function runInWords(
  view: TableView,
  column: Column | undefined,
): CellReader<WrittenRun | null> {
  if (column === undefined) return () => null;
  const { index } = column;
  return (line, row) => {
    const cell = line[index];
    if (typeof cell !== "string" || runKinds.has(cell.trim().toLowerCase())) return null;
    if (runCell(cell, null).is !== "figure-unsettled") return written(cell);
    const run = written(cell, "minutes");
    if (run === null) return null;
    view.log.add("run-figure-beside", row, index, cell);
    return { ...run, minutes: "" };
  };
}

/** A run with its kind; what a bare number is matters to nobody who asks for the kind. */
function written(text: string, bare: "minutes" | null = null): WrittenRun | null {
  const said = runCell(text, bare);
  return said.is === "run" && said.run.kind !== "" ? said.run : null;
}
