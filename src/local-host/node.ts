/** What the local workbook offers a program in Node: bundled to `dist/local/node.cjs`. */
export { openHost } from "./open-host";
export { serveWorkbook } from "./server/serve-workbook";
export { plainTab } from "./workbook-data";
