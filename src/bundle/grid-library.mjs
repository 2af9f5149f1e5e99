import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

/**
 * Online spreadsheets write ranges without an end (A2:H, B5:B). The grid library at 0.25.1 reads A:H
 * and A2:H9 only: its engine copes with an open end (a row that is not a number), but three places
 * refuse or misprint one. Each is mended while bundling and must be found exactly once, so that
 * another version of the library stops the build instead of silently losing the mend.
 */
const openEnds = [
  {
    // The range pattern: the second corner may lack its row.
    found: `\${SIMPLE_SINGLE_RANGE_REGEX}\${RANGE_SYMBOL}\${SIMPLE_SINGLE_RANGE_REGEX}$\``,
    mended: `\${SIMPLE_SINGLE_RANGE_REGEX}\${RANGE_SYMBOL}\\\\$?[A-Za-z]+(\\\\$?\${ROW_REGEX})?$\``,
  },
  {
    // Joining two corners: a cell and a column make a range open below.
    found: '\telse referenceObject = ErrorValueObject.create("#NAME?");\n\treturn referenceObject;',
    mended: `\telse if (variant1.isCell() && variant2.isColumn()) {
		const from = variant1.getRangeData();
		const to = variant2.getRangeData();
		referenceObject = variant1._createRange({
			startRow: from.startRow,
			endRow: NaN,
			startColumn: Math.min(from.startColumn, to.startColumn),
			endColumn: Math.max(from.startColumn, to.startColumn),
			startAbsoluteRefType: from.startAbsoluteRefType,
			endAbsoluteRefType: to.startAbsoluteRefType,
		});
	} else referenceObject = ErrorValueObject.create("#NAME?");
	return referenceObject;`,
  },
  {
    // Printing a range: no row where there is none.
    found: `\${Tools.chatAtABC(endColumn)}\${end.rowAbsoluteString}\${endRow + 1}\`;\n\tif (startStr === endStr)`,
    mended: `\${Tools.chatAtABC(endColumn)}\${Number.isNaN(endRow) ? "" : end.rowAbsoluteString + (endRow + 1)}\`;\n\tif (startStr === endStr)`,
  },
];

export const openEndedRanges = {
  name: "open-ended-ranges",
  setup(build) {
    const engine = /@univerjs[\\/]engine-formula[\\/]lib[\\/](es|cjs)[\\/]index\.js$/;
    build.onLoad({ filter: engine }, ({ path }) => {
      let contents = readFileSync(path, "utf8");
      for (const { found, mended } of openEnds) {
        const places = contents.split(found).length - 1;
        if (places !== 1) {
          throw new Error(
            `${path}: a place to mend was found ${places} times: ${found.slice(0, 60)}`,
          );
        }
        contents = contents.replace(found, () => mended);
      }
      return { contents, loader: "js" };
    });
  },
};

/** Where the library reads a typed or pasted text: month before day, and commas as if they were not there. */
const asEnglish =
  "const parseData = (_ref = (_numfmt$parseDate = numfmt.parseDate(value)) !== null && _numfmt$parseDate !== void 0 ? _numfmt$parseDate : numfmt.parseTime(value)) !== null && _ref !== void 0 ? _ref : numfmt.parseNumber(value);";

/** Typed and pasted texts are read as the reader's language has them. */
export const typedInLanguage = {
  name: "typed-in-language",
  setup(build) {
    const core = /@univerjs[\\/]core[\\/]lib[\\/](es|cjs)[\\/]index\.js$/;
    const typedValue = fileURLToPath(
      new URL("../local-host/engine/typed-value.ts", import.meta.url),
    );
    build.onLoad({ filter: core }, ({ path }) => {
      const text = readFileSync(path, "utf8");
      if (text.split(asEnglish).length !== 2)
        throw new Error(`${path}: the place where typed texts are read was not found once.`);
      const from = JSON.stringify(typedValue);
      const brought = /[\\/]cjs[\\/]/.test(path)
        ? `const { typedValue } = require(${from});`
        : `import { typedValue } from ${from};`;
      const contents = text.replace(
        asEnglish,
        () => "const parseData = typedValue(value, numfmt);",
      );
      return { contents: `${brought}\n${contents}`, loader: "js" };
    });
  },
};

/** Five megabytes of hyphenation tables for every language: a sheet never hyphenates. */
export const noHyphenation = {
  name: "no-hyphenation",
  setup(build) {
    const tables = /@univerjs.engine-render.lib.es.[a-z0-9-]+-.{8}\.js$/;
    build.onLoad({ filter: tables }, ({ path }) =>
      /[\\/]en-/.test(path)
        ? undefined
        : { contents: "export default {}; export const hyphen = {};", loader: "js" },
    );
  },
};
