/**
 * Formulas as the file writes them and as the grid reads them. Files mark functions younger than
 * 2010 with a prefix, and know no range without an end: "A2:H" is written to the last row there is.
 */
const lastRow = 1_048_576;
const worksheetFunctions = new Set(["FILTER", "SORT"]);
const younger = new Set(
  "CONCAT,IFS,LET,LAMBDA,MAXIFS,MINIFS,SEQUENCE,SORTBY,SWITCH,TEXTJOIN,UNIQUE,XLOOKUP,XMATCH,RANDARRAY,TEXTSPLIT,VSTACK,HSTACK,TOCOL,TOROW,WRAPROWS,WRAPCOLS,TAKE,DROP,CHOOSECOLS,CHOOSEROWS,EXPAND,TEXTBEFORE,TEXTAFTER,MAP,REDUCE,SCAN,BYROW,BYCOL,MAKEARRAY,DAYS,ISOWEEKNUM,NUMBERVALUE,IFNA,XOR,UNICHAR,UNICODE".split(
    ",",
  ),
);

/** From the file: with a leading "=". */
export function formulaFromFile(text: string): string {
  return `=${outsideText(text, (part) =>
    part
      .replace(/_xlfn\.(?:_xlws\.)?/g, "")
      .replace(/(\$?[A-Z]{1,3}\$?\d+):(\$?[A-Z]{1,3})\$?1048576\b/g, "$1:$2"),
  )}`;
}

/** For the file: without the leading "=". */
export function formulaForFile(formula: string): string {
  return outsideText(formula.replace(/^=/, ""), (part) =>
    part
      .replace(
        /(\$?[A-Za-z]{1,3})(\$?)(\d+):(\$?[A-Za-z]{1,3})(?![\w$.(!])/g,
        (_, from, fixed, row, to) => `${from}${fixed}${row}:${to}${fixed}${lastRow}`,
      )
      .replace(/([A-Za-z][A-Za-z0-9.]*)(?=\()/g, (name: string) => {
        const upper = name.toUpperCase();
        if (worksheetFunctions.has(upper)) return `_xlfn._xlws.${upper}`;
        return younger.has(upper) ? `_xlfn.${upper}` : name;
      }),
  );
}

/** Changes a formula but not what stands in quotation marks: texts and tab names. */
function outsideText(formula: string, change: (part: string) => string): string {
  return formula
    .split(/("(?:[^"]|"")*"|'(?:[^']|'')*')/)
    .map((part, i) => (i % 2 === 0 ? change(part) : part))
    .join("");
}
