import { request } from "node:http";
import type { Served } from "../../src/local-host/server/serve-workbook";
import { plainTab, type WorkbookData } from "../../src/local-host/workbook-data";
import { local } from "./built";

const workbook: WorkbookData = {
  name: "Quillbeck",
  tabs: [plainTab("Sets", [[{ value: 1 }]])],
  names: [],
  properties: {},
};
let saved: readonly [number, WorkbookData] | null = null;
let given: readonly string[] = [];
let served: Served;

beforeAll(async () => {
  served = await local.serveWorkbook({
    files: { "page.js": "page", "page.css": "css", "code.js": "code", "Sidebar.html": "side" },
    store: {
      opened: async () => ({ opening: 3, workbook, place: "here.xlsx", notes: [] }),
      sample: async () => {
        throw new Error("The sample is missing.");
      },
      imported: async (files) => {
        given = files.map(({ name, bytes }) => `${name}: ${Buffer.from(bytes).toString("utf8")}`);
        return { opening: 4, workbook, place: null, notes: ["Two tables found."] };
      },
      save: async (opening, changed) => {
        saved = [opening, changed];
      },
      exported: async () => new Uint8Array([80, 75]),
    },
  });
});
afterAll(() => served.close());

/** Asks without following the address's own host, so that a wrong one can be sent. */
function ask(path: string, host?: string, address = "127.0.0.1"): Promise<number | string> {
  const { port, host: own } = new URL(served.url);
  return new Promise((resolve) => {
    request({ host: address, port, path, headers: { host: host ?? own } }, (response) => {
      response.resume();
      resolve(response.statusCode ?? 0);
    })
      .on("error", (error: NodeJS.ErrnoException) => resolve(error.code ?? "error"))
      .end();
  });
}

test("the page is under a random token, and nothing is anywhere else", async () => {
  const { pathname } = new URL(served.url);
  expect(pathname).toMatch(/^\/[0-9a-f]{32}\/$/);
  expect(await ask(pathname)).toBe(200);
  expect(await ask("/")).toBe(404);
  expect(await ask("/workbook")).toBe(404);
  expect(await ask(`/${"0".repeat(32)}/`)).toBe(404);
  expect(await ask(`${pathname}../../etc/passwd`)).toBe(404);
  expect(await ask(`${pathname}__proto__`)).toBe(404);
});

test("two servers have different tokens and ports", async () => {
  const other = await local.serveWorkbook({ files: {} as never, store: {} as never });
  expect(new URL(other.url).pathname).not.toBe(new URL(served.url).pathname);
  expect(new URL(other.url).port).not.toBe(new URL(served.url).port);
  await other.close();
});

test("another site's name that points here is answered with nothing", async () => {
  const { pathname, port } = new URL(served.url);
  expect(await ask(pathname, `rebound.example:${port}`)).toBe(404);
  expect(await ask(pathname, `localhost:${port}`)).toBe(404);
});

test("only 127.0.0.1 is listened on", async () => {
  expect(await ask(new URL(served.url).pathname, undefined, "127.0.0.2")).not.toBe(200);
});

test("every answer forbids requests elsewhere, framing and keeping", async () => {
  const { headers } = await fetch(served.url);
  expect(headers.get("content-security-policy")).toMatch(
    /^default-src 'none'; script-src 'self' 'nonce-[0-9a-f]{32}';.*connect-src 'self';.*frame-ancestors 'none'$/,
  );
  expect(headers.get("cache-control")).toBe("no-store");
  expect(headers.get("referrer-policy")).toBe("no-referrer");
});

test("the nonce is new each time", async () => {
  const nonce = async () => /nonce="(\w+)"/.exec(await (await fetch(served.url)).text())?.[1];
  expect(await nonce()).not.toBe(await nonce());
});

test("the workbook is given, taken back changed, imported and exported", async () => {
  expect(await (await fetch(`${served.url}workbook`)).json()).toMatchObject({ workbook });
  const changed = { ...workbook, name: "Changed" };
  await fetch(`${served.url}workbook`, {
    method: "PUT",
    body: JSON.stringify({ opening: 3, workbook: changed }),
  });
  expect(saved).toEqual([3, changed]);
  const files = [{ name: "Sets.csv", base64: Buffer.from("Date,Load").toString("base64") }];
  const imported = await fetch(`${served.url}import`, {
    method: "POST",
    body: JSON.stringify(files),
  });
  expect(await imported.json()).toMatchObject({ place: null, notes: ["Two tables found."] });
  expect(given).toEqual(["Sets.csv: Date,Load"]);
  const exported = await fetch(`${served.url}export`, { method: "POST", body: "{}" });
  expect([...new Uint8Array(await exported.arrayBuffer())]).toEqual([80, 75]);
});

test("what goes wrong comes back as its sentence", async () => {
  const answer = await fetch(`${served.url}sample`, { method: "POST" });
  expect([answer.status, await answer.json()]).toEqual([
    422,
    { sentence: "The sample is missing." },
  ]);
});

test("a waiting page hears of the end, and nothing is served after it", async () => {
  const other = await local.serveWorkbook({ files: {} as never, store: {} as never });
  const heard = fetch(`${other.url}until-closed`).then(
    () => "heard",
    () => "heard",
  );
  await new Promise((resolve) => setTimeout(resolve, 100));
  await other.close();
  expect(await heard).toBe("heard");
  await expect(fetch(other.url)).rejects.toThrow();
});
