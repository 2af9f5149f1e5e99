import { request } from "node:http";
import { Readable } from "node:stream";
import { requestBody } from "../../src/local-host/server/request-body";
import type { Served } from "../../src/local-host/server/serve-workbook";
import { plainTab, type WorkbookData } from "../../src/local-host/workbook-data";
import { local } from "../local-host/built";

const workbook: WorkbookData = {
  name: "Quillbeck",
  tabs: [plainTab("Sets", [[{ value: 1 }]])],
  names: [],
  properties: {},
};
/** Everything that was asked of the store: a refused request asks nothing. */
const asked: string[] = [];
let served: Served;
let path: string;
let host: string;

beforeAll(async () => {
  const noted =
    <T>(name: string, answer: T) =>
    async () => {
      asked.push(name);
      return answer;
    };
  const opened = { opening: 0, workbook, place: null, notes: [] };
  served = await local.serveWorkbook({
    files: { "page.js": "page", "page.css": "css", "code.js": "code", "Sidebar.html": "side" },
    store: {
      opened: noted("opened", opened),
      sample: noted("sample", opened),
      imported: noted("imported", opened),
      save: noted("save", undefined),
      exported: noted("exported", new Uint8Array([80, 75])),
    },
  });
  ({ pathname: path, host } = new URL(served.url));
});
afterAll(() => served.close());
beforeEach(() => {
  asked.length = 0;
});

type Sent = { method?: string; headers?: Record<string, string>; body?: string };
type Answered = { readonly status: number | string; readonly body: string };
/** Sends a path as it is written: no client tidies it first. */
const send = (to: string, { method = "GET", headers = {}, body = "" }: Sent = {}) =>
  new Promise<Answered>((resolve) => {
    const { hostname, port } = new URL(served.url);
    const takesBody = /^P(?!ROP)/.test(method);
    request(
      { host: hostname, port, path: to, method, agent: false, headers: { host, ...headers } },
      (response) => {
        let text = "";
        response.on("data", (part) => {
          text += String(part);
        });
        response.on("end", () => resolve({ status: response.statusCode ?? 0, body: text }));
      },
    )
      .on("error", (error: NodeJS.ErrnoException) =>
        resolve({ status: error.code ?? "error", body: "" }),
      )
      .end(takesBody ? body : "");
  });

const nothing = { status: 404, body: "Nothing here.\n" };

test("with the token, from its own page, everything is there", async () => {
  const own = { headers: { origin: `http://${host}` } };
  expect((await send(path, own)).status).toBe(200);
  expect((await send(`${path}workbook`, { ...own, method: "PUT", body: "{}" })).status).toBe(200);
  expect(asked).toEqual(["save"]);
});

test.each(["", "0".repeat(32), "__proto__", "constructor", "..", "%2e%2e", "undefined"])(
  "nothing is under the token “%s”",
  async (token) => {
    for (const [method, name] of [
      ["GET", "workbook"],
      ["PUT", "workbook"],
      ["POST", "sample"],
      ["POST", "export"],
      ["GET", "code.js"],
    ] as const) {
      expect(await send(`/${token}/${name}`, { method, body: "{}" })).toEqual(nothing);
    }
    expect(asked).toEqual([]);
  },
);

test.each([
  "../package.json",
  "..%2fpackage.json",
  "%2e%2e/%2e%2e/etc/passwd",
  "..\\..\\etc\\passwd",
  "/etc/passwd",
  "code.js/../../package.json",
  "code.js/",
  "code.js%00",
  "CODE.JS",
  "__proto__",
  "constructor",
  "toString",
  "hasOwnProperty",
  "workbook/x",
  "holdline.cjs",
  "node.cjs",
  ".git/config",
])("the file “%s” is not there, token or not", async (name) => {
  expect(await send(`${path}${name}`)).toEqual(nothing);
  expect(asked).toEqual([]);
});

test.each(["DELETE", "PATCH", "OPTIONS", "TRACE", "HEAD", "PROPFIND", "PUT", "POST"])(
  "%s is served for nothing that does not take it",
  async (method) => {
    for (const name of ["", "code.js", "__proto__", "sample/", "until-closed"]) {
      expect((await send(`${path}${name}`, { method, body: "{}" })).status).toBe(404);
    }
    expect(asked).toEqual([]);
  },
);

test.each([
  ["another site's page", { origin: "https://elsewhere.invalid" }],
  ["a page of a sandbox or a file", { origin: "null" }],
  ["another port's page on this machine", { origin: "http://127.0.0.1:1" }],
  ["this page under another scheme", { origin: "https://127.0.0.1" }],
  ["a name that was made to point here", { host: "elsewhere.invalid" }],
  ["the machine's own name", { host: "localhost" }],
])("%s is answered with nothing, even with the token", async (_, headers) => {
  expect(await send(path, { headers })).toEqual(nothing);
  expect(await send(`${path}workbook`, { method: "PUT", headers, body: "{}" })).toEqual(nothing);
  expect(await send(`${path}sample`, { method: "POST", headers })).toEqual(nothing);
  expect(asked).toEqual([]);
});

test.each(["", "{", "\u0000", "[1,", "<script>"])(
  "a body that is no JSON (%j) is refused in a sentence and saves nothing",
  async (body) => {
    const answer = await send(`${path}workbook`, { method: "PUT", body });
    expect([answer.status, JSON.parse(answer.body)]).toEqual([
      422,
      { sentence: "The page sent something that cannot be read. Load it again." },
    ]);
    expect(asked).toEqual([]);
  },
);

test("a body that says it is larger than any workbook is refused before it is read", async () => {
  const answer = await send(`${path}workbook`, {
    method: "PUT",
    headers: { "content-length": String(10 ** 10) },
    body: "{}",
  });
  expect(answer.status === 422 || answer.status === "ECONNRESET").toBe(true);
  expect(asked).toEqual([]);
});

test("a body that goes on without saying how long it is ends at the limit", async () => {
  let given = 0;
  const endless = new Readable({
    read() {
      given += 1000;
      this.push(Buffer.alloc(1000));
    },
    highWaterMark: 1000,
  });
  await expect(requestBody(Object.assign(endless, { headers: {} }), 50_000)).rejects.toThrow(
    "The workbook is larger than 200 MB.",
  );
  expect(given).toBeLessThan(60_000);
});
