import type { Injector } from "@univerjs/core";
import {
  ErrorType,
  ErrorValueObject,
  IDependencyManagerService,
  IFormulaDependencyGenerator,
  IFormulaRuntimeService,
  Interpreter,
} from "@univerjs/engine-formula";
import { localFormulas } from "../../words/local-formulas";
import { knots } from "./knots";
import { missingTabs } from "./missing-tab";
import type { Sentences } from "./sentences";

type Formula = {
  readonly treeId: number;
  readonly subUnitId: string;
  readonly row: number;
  readonly column: number;
  readonly formula: string;
  readonly toRTreeItem: () => never;
};

/** What the library keeps to itself here: whether formulas about to be calculated go round in a circle. */
type Inside = { _checkIsCycleDependency: (formulas: readonly Formula[]) => boolean };

const saidHere: ReadonlySet<string | undefined> = new Set([
  localFormulas.circle,
  localFormulas.ownCell,
]);

/**
 * Refuses formulas that rest on their own results, by a range with their own cell or over one another.
 * The grid library would calculate each once, in an order nobody chose, and show what came out as if
 * it were a figure. As in the online sheet each of them holds #REF! instead, and what rests on them
 * an error.
 */
export function refuseCircles(injector: Injector, sentences: Sentences): void {
  const generator = injector.get(IFormulaDependencyGenerator) as unknown as Inside;
  const dependencies = injector.get(IDependencyManagerService);
  const runtime = injector.get(IFormulaRuntimeService);
  const interpreter = injector.get(Interpreter);
  const namesMissingTab = missingTabs(injector);
  const place = (tabId: string, row: number, column: number) => `${tabId}|${row}|${column}`;
  let inCircle: ReadonlySet<string> = new Set();

  /** The sentence of each formula that rests on itself, by its id. */
  const refusals = (formulas: readonly Formula[]): Map<number, string> => {
    // Cells of a tab that is not there are taken by the library for those of the formula's own.
    const placed = formulas.filter(({ formula }) => !namesMissingTab(formula));
    const names = placed.map(({ treeId }) => treeId);
    const next = placed.map((one) => dependencies.searchDependency(one.toRTreeItem()));
    const itself = new Set(names.filter((name, at) => next[at]!.has(name)));
    const circling = knots(names, next).flat();
    return new Map(
      circling.map((name) => [
        name,
        itself.has(name) ? localFormulas.ownCell : localFormulas.circle,
      ]),
    );
  };

  const isCircle = generator._checkIsCycleDependency.bind(generator);
  generator._checkIsCycleDependency = (formulas) => {
    const any = isCircle(formulas);
    const sentenceOf = any ? refusals(formulas) : new Map<number, string>();
    const places = new Set<string>();
    for (const { treeId, subUnitId, row, column } of formulas) {
      const sentence = sentenceOf.get(treeId);
      if (sentence !== undefined) {
        places.add(place(subUnitId, row, column));
        sentences.set(subUnitId, row, column, sentence);
      } else if (saidHere.has(sentences.get(subUnitId, row, column))) {
        sentences.clear(subUnitId, row, column);
      }
    }
    inCircle = places;
    return any;
  };

  const refused = () =>
    inCircle.size > 0 &&
    inCircle.has(place(runtime.currentSubUnitId, runtime.currentRow, runtime.currentColumn));
  const execute = interpreter.execute.bind(interpreter);
  interpreter.execute = (node) =>
    refused() ? ErrorValueObject.create(ErrorType.REF) : execute(node);
  const executeAsync = interpreter.executeAsync.bind(interpreter);
  interpreter.executeAsync = async (node) =>
    refused() ? ErrorValueObject.create(ErrorType.REF) : executeAsync(node);
}
