import { readFileSync } from "node:fs";
import { join } from "node:path";
import { declaredFunctions } from "../engine/declared-functions";
import { fileStore } from "../files/file-store";
import { type PageFiles, serveWorkbook } from "../server/serve-workbook";
import type { Asked } from "./arguments";
import { builtAddOn } from "./opened-workbook";
import { Refused, type Surroundings } from "./surroundings";

/** Serves a workbook on this machine until the program is stopped. */
export async function openCommand(asked: Asked, around: Surroundings): Promise<number> {
  const { bundleSource, files } = builtAddOn(around.dist);
  const own = new Set(declaredFunctions(bundleSource).map(({ name }) => name));
  const store = fileStore({ path: asked.workbook, sample: around.sample, own });
  try {
    // Said here rather than in the page: a wrong path should not open a page at all.
    const opened = await store.opened();
    for (const note of opened?.notes ?? []) around.err(`${note}\n`);
  } catch (error) {
    throw new Refused(error instanceof Error ? error.message : String(error));
  }
  const local = (file: string) => readFileSync(join(around.dist, "local", file), "utf8");
  const page: PageFiles = {
    "page.js": local("page.js"),
    "page.css": local("page.css"),
    "code.js": bundleSource,
    "Sidebar.html": files.Sidebar ?? "",
  };
  // Asked to open nothing in particular, the page offers the sample or a file of one's own.
  const choose = asked.command === "open" && asked.workbook === null;
  const served = await serveWorkbook({
    store: choose ? { ...store, opened: async () => null } : store,
    files: page,
    port: asked.port,
  });
  around.out(`Open ${served.url}\nStop with Ctrl+C.\n`);
  await around.untilStopped();
  await served.close();
  around.out("Closed.\n");
  return 0;
}
