/** What stands at the top of a tab's part, in the order it must (ECMA-376 part 1, 18.3.1.99). */
const order =
  "sheetData,sheetCalcPr,sheetProtection,protectedRanges,scenarios,autoFilter,sortState,dataConsolidate,customSheetViews,mergeCells,phoneticPr,conditionalFormatting,dataValidations,hyperlinks,printOptions,pageMargins,pageSetup,headerFooter,rowBreaks,colBreaks,customProperties,cellWatches,ignoredErrors,smartTags,drawing,legacyDrawing,legacyDrawingHF,picture,oleObjects,controls,webPublishItems,tableParts,extLst".split(
    ",",
  );
const rank = new Map(order.map((name, at) => [name, at]));

export type TabElement = { readonly name: string; readonly xml: string };

/** A tab's part in three: all up to the end of its cells, each element after them, the part's end. */
export type TabText = {
  readonly cells: string;
  readonly elements: readonly TabElement[];
  readonly end: string;
};

/** Null for a part without cells. */
export function tabText(text: string): TabText | null {
  const closing = text.lastIndexOf("</sheetData>");
  const none = closing < 0 ? /<sheetData\s*\/>/.exec(text) : null;
  if (closing < 0 && !none) return null;
  const from = none ? none.index + none[0].length : closing + "</sheetData>".length;
  const elements: TabElement[] = [];
  const opening = /\s*<([A-Za-z][\w:.-]*)\b[^<>]*>/y;
  let at = from;
  for (;;) {
    opening.lastIndex = at;
    const [tag, name] = opening.exec(text) ?? [];
    if (tag === undefined || name === undefined) break;
    const closed = tag.endsWith("/>");
    const close = closed ? opening.lastIndex : text.indexOf(`</${name}>`, at);
    if (close < 0) break;
    const next = closed ? close : close + name.length + 3;
    elements.push({ name, xml: text.slice(at, next).trim() });
    at = next;
  }
  return { cells: text.slice(0, from), elements, end: text.slice(at) };
}

export function textOf({ cells, elements, end }: TabText): string {
  return `${cells}${elements.map(({ xml }) => xml).join("")}${end}`;
}

/** The elements with more among them, each in its place. */
export function withElements(text: TabText, more: readonly TabElement[]): TabText {
  const placeOf = ({ name }: TabElement) => rank.get(name) ?? order.length;
  return { ...text, elements: [...text.elements, ...more].sort((a, b) => placeOf(a) - placeOf(b)) };
}
