import type { Injector } from "@univerjs/core";
import {
  deserializeRangeWithSheet,
  IFormulaCurrentConfigService,
  LexerTreeBuilder,
  sequenceNodeType,
} from "@univerjs/engine-formula";

/** Whether a formula names a tab that the workbook does not have. */
export function missingTabs(injector: Injector): (formula: string) => boolean {
  const lexer = injector.get(LexerTreeBuilder);
  const config = injector.get(IFormulaCurrentConfigService);
  return (formula) => {
    const tabs = new Set(
      Object.values(config.getSheetNameMap()).flatMap((named) => Object.keys(named ?? {})),
    );
    return (lexer.sequenceNodesBuilder(formula) ?? []).some((node) => {
      if (typeof node === "string" || node.nodeType !== sequenceNodeType.REFERENCE) return false;
      const { sheetName } = deserializeRangeWithSheet(node.token);
      return sheetName !== "" && !tabs.has(sheetName);
    });
  };
}
