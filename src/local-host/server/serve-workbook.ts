import { randomBytes } from "node:crypto";
import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { messageOf } from "../message-of";
import type { WorkbookData } from "../workbook-data";
import { pageHtml } from "./page-html";
import { requestJson } from "./request-body";
import { securityHeaders } from "./security-headers";
import type { GivenFile, WorkbookStore } from "./workbook-store";

/** Files the page asks for by name, with their text. */
export type PageFiles = Readonly<
  Record<"page.js" | "page.css" | "code.js" | "Sidebar.html", string>
>;

export type Served = {
  /** Where the page is, token included. */
  readonly url: string;
  /** Stops serving; open pages notice. */
  readonly close: () => Promise<void>;
};

const types: Readonly<Record<string, string>> = {
  js: "text/javascript; charset=utf-8",
  css: "text/css; charset=utf-8",
  html: "text/html; charset=utf-8",
};

type Answer = {
  readonly status?: number;
  readonly type: string;
  readonly body: string | Uint8Array;
};

/**
 * Serves one workbook to this machine alone: on 127.0.0.1, under a path with a random token, so that
 * no other page or user of the machine finds it.
 *
 * @param port 0 takes a free one
 */
export async function serveWorkbook(given: {
  readonly store: WorkbookStore;
  readonly files: PageFiles;
  readonly port?: number;
}): Promise<Served> {
  const { store, files } = given;
  const token = randomBytes(16).toString("hex");
  const waiting = new Set<ServerResponse>();

  const json = (value: unknown): Answer => ({
    type: "application/json; charset=utf-8",
    body: JSON.stringify(value),
  });
  const workbookIn = async (request: IncomingMessage) =>
    (await requestJson(request)) as { readonly opening: number; readonly workbook: WorkbookData };
  const actions: Record<string, (request: IncomingMessage) => Promise<Answer>> = {
    "GET workbook": async () => json(await store.opened()),
    "POST sample": async () => json(await store.sample()),
    "POST import": async (request) => {
      const list = (await requestJson(request)) as { name: string; base64: string }[];
      const picked: GivenFile[] = list.map(({ name, base64 }) => ({
        name,
        bytes: Buffer.from(base64, "base64"),
      }));
      return json(await store.imported(picked));
    },
    "PUT workbook": async (request) => {
      const { opening, workbook } = await workbookIn(request);
      await store.save(opening, workbook);
      return json(null);
    },
    "POST export": async (request) => {
      const { opening, workbook } = await workbookIn(request);
      return {
        type: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
        body: await store.exported(opening, workbook),
      };
    },
  };

  const server = createServer((request, response) => {
    void answer(request, response);
  });
  async function answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const nonce = randomBytes(16).toString("hex");
    const send = ({ status = 200, type, body }: Answer) => {
      response.writeHead(status, { ...securityHeaders(nonce), "Content-Type": type });
      response.end(body);
    };
    const [, key, name = "", ...more] = (request.url ?? "/").split("?")[0]!.split("/");
    // The name in the address must be the number: another site's name could be made to point here.
    const host = `127.0.0.1:${(server.address() as AddressInfo).port}`;
    const { origin } = request.headers;
    // A browser says which page sends something: another site's page is not answered, token or not.
    const here = request.headers.host === host && (!origin || origin === `http://${host}`);
    if (!here || key !== token || more.length > 0) {
      send({ status: 404, type: "text/plain; charset=utf-8", body: "Nothing here.\n" });
      return;
    }
    if (request.method === "GET" && name === "") {
      send({ type: types.html!, body: pageHtml(nonce) });
    } else if (request.method === "GET" && Object.hasOwn(files, name)) {
      const type = types[name.split(".").pop()!]!;
      send({ type, body: files[name as keyof PageFiles] });
    } else if (request.method === "GET" && name === "until-closed") {
      // Answered only when the program ends, so that an open page knows at once.
      waiting.add(response);
      response.on("close", () => waiting.delete(response));
    } else {
      const action = actions[`${request.method} ${name}`];
      if (!action) {
        send({ status: 404, type: "text/plain; charset=utf-8", body: "Nothing here.\n" });
        return;
      }
      try {
        send(await action(request));
      } catch (error) {
        const sentence = messageOf(error);
        send({ ...json({ sentence }), status: 422 });
      }
    }
  }

  await new Promise<void>((resolve, reject) => {
    server.once("error", reject);
    server.listen(given.port ?? 0, "127.0.0.1", resolve);
  });
  const { port } = server.address() as AddressInfo;
  return {
    url: `http://127.0.0.1:${port}/${token}/`,
    close: async () => {
      for (const response of waiting) response.end();
      await new Promise<void>((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      });
    },
  };
}
