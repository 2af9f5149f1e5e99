/** A small script in the shape of a pushed one: documented functions, a menu, server functions. */
export const fixtureScript = `
var seen = [];
function kindOf(x) { return x instanceof Date ? "date" : x === "" ? "blank" : x === undefined ? "none" : typeof x; }
/**
 * Kind of each argument, or of each cell of a range.
 * @param value anything
 * @customfunction
 */
function KINDS(value) {
  return Array.isArray(value)
    ? value.map(function (row) { return row.map(kindOf); })
    : Array.prototype.slice.call(arguments).map(function (x) { return [kindOf(x)]; });
}
/** @customfunction */
function SHAPE(range) { return Array.isArray(range) ? range.length + " x " + range[0].length : "one cell"; }
/** @customfunction */
function ECHO(value) { return value; }
/** @customfunction */
function TOTAL(range) {
  return range.reduce(function (sum, row) {
    return row.reduce(function (s, x) { return typeof x === "number" ? s + x : s; }, sum);
  }, 0);
}
/**
 * Rows of a column.
 * @param n how many
 * @param from the first number May be left out.
 * @customfunction
 */
function COUNT_TO(n, from) {
  var rows = [];
  for (var i = 0; i < n; i++) rows.push([i + (from === undefined ? 1 : from), "row " + (i + 1)]);
  return rows;
}
/** @customfunction */
function REFUSES(x) { throw new Error("Two sets are needed, " + x + " was found."); }
/** @customfunction */
function WRITES() { SpreadsheetApp.getActive().getActiveSheet().getRange("A1").setValue(1); return 1; }
/** @customfunction */
function SHOWS() { SpreadsheetApp.getUi(); return 1; }
/** @customfunction */
function TABS() { return SpreadsheetApp.getActive().getSheets().length; }
/** @customfunction */
function SPOILS(range) { range[0][0] = "spoilt"; return "done"; }
/** @customfunction */
function TURNS_OVER(range, again) {
  var same = range === again;
  range[0][0].setFullYear(1999);
  range[1] = range[2];
  range.reverse().push(["more"]);
  range[0].push("wider");
  return [[same, again === undefined ? "" : String(again[0][0])]];
}
/** @customfunction */
function JOINED(range) {
  return range.map(function (row) {
    return row.map(function (x) { return x instanceof Date ? x.getFullYear() : x; }).join(",");
  }).join(";");
}
/** @customfunction */
function A_DAY() { return new Date(2026, 4, 12); }
function hidden_() { return 1; }
function onOpen() {
  SpreadsheetApp.getUi().createAddonMenu().addItem("Open", "openIt").addSeparator().addItem("Check", "check").addToUi();
}
function openIt() {
  SpreadsheetApp.getUi().showSidebar(HtmlService.createHtmlOutputFromFile("Sidebar").setTitle("Holdline"));
}
function givesDate() { return { day: new Date(2026, 4, 12) }; }
function givesNothing() {}
function givesBack(x) { return x; }
function says() { throw new Error("No rows yet."); }
function onSheet(code) { return new Function("ss", "SpreadsheetApp", "HtmlService", "PropertiesService", "LockService", "CacheService", code)(SpreadsheetApp.getActive(), SpreadsheetApp, HtmlService, PropertiesService, LockService, CacheService); }
`;
