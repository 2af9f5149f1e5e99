import type { Asked } from "./arguments";
import { openedWorkbook } from "./opened-workbook";
import { plainValue, shownValue } from "./shown-value";
import { Refused, type Surroundings } from "./surroundings";
import { textTable } from "./text-table";

/** Calculates one formula against a workbook; JSON is its rows of cells. */
export async function formulaCommand(asked: Asked, around: Surroundings): Promise<number> {
  const { host } = await openedWorkbook(asked.workbook, around);
  try {
    const answer = await host.evaluate(asked.formula);
    if (!answer.ok) throw new Refused(answer.sentence);
    around.out(
      asked.json
        ? `${JSON.stringify(answer.values.map((row) => row.map(plainValue)))}\n`
        : textTable(
            answer.values.map((row) => row.map(shownValue)),
            false,
          ),
    );
    return 0;
  } finally {
    host.dispose();
  }
}
