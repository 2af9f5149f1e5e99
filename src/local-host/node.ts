/** What the local workbook offers a program in Node: bundled to `dist/local/node.cjs`. */
export { openHost } from "./open-host";
export { plainTab } from "./workbook-data";
export { serveWorkbook } from "./server/serve-workbook";
