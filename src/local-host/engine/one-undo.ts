import { type Injector, type IUndoRedoItem, IUndoRedoService } from "@univerjs/core";

/**
 * Runs something that changes the workbook in many steps, so that one Undo takes all of it back. The
 * library's own batching undoes the first step first, which is wrong where two steps touch one cell:
 * so each step is taken off the library's list as it comes, and all are put there as one.
 */
export function oneUndo<Result>(injector: Injector, unitID: string, run: () => Result): Result {
  const service = injector.get(IUndoRedoService);
  const { _undoStacks: stacks } = service as unknown as {
    readonly _undoStacks: ReadonlyMap<string, IUndoRedoItem[]>;
  };
  const top = stacks.get(unitID)?.at(-1);
  const steps: IUndoRedoItem[] = [];
  const watching = service.undoRedoStatus$.subscribe(() => {
    const stack = stacks.get(unitID);
    const last = stack?.at(-1);
    if (!stack || !last || last === top) return;
    stack.pop();
    steps.push(last);
  });
  try {
    return run();
  } finally {
    watching.unsubscribe();
    if (steps.length > 0) {
      service.pushUndoRedo({
        unitID,
        undoMutations: [...steps].reverse().flatMap(({ undoMutations }) => undoMutations),
        redoMutations: steps.flatMap(({ redoMutations }) => redoMutations),
      });
    }
  }
}
