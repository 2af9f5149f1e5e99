import { localPage } from "../../words/local-page";
import type { OpenedWorkbook } from "../server/workbook-store";
import type { WorkbookData } from "../workbook-data";

/** The sentence of an answer that refuses, thrown as an `Error`. */
async function answered(response: Response): Promise<Response> {
  if (response.ok) return response;
  const refusal: unknown = await response.json().catch(() => null);
  const sentence =
    refusal !== null && typeof refusal === "object" && "sentence" in refusal
      ? String(refusal.sentence)
      : `The program answered ${response.status}.`;
  throw new Error(sentence);
}

const asked = async (name: string, init?: RequestInit) => {
  // A browser says of it no more than "Failed to fetch".
  const response = await fetch(name, init).catch(() => {
    throw new Error(localPage.noAnswer);
  });
  return answered(response);
};

/** What the page asks of the program that serves it. Refusals reject with their sentence. */
export const requests = {
  text: async (name: string) => (await asked(name)).text(),
  opened: async () => (await asked("workbook")).json() as Promise<OpenedWorkbook | null>,
  sample: async () => (await asked("sample", { method: "POST" })).json() as Promise<OpenedWorkbook>,
  imported: async (files: readonly File[]) => {
    const given = await Promise.all(
      files.map(async (file) => ({ name: file.name, base64: await base64(file) })),
    );
    const response = await asked("import", { method: "POST", body: JSON.stringify(given) });
    return response.json() as Promise<OpenedWorkbook>;
  },
  save: async (opening: number, workbook: WorkbookData) => {
    await asked("workbook", { method: "PUT", body: JSON.stringify({ opening, workbook }) });
  },
  exported: async (opening: number, workbook: WorkbookData) => {
    const body = JSON.stringify({ opening, workbook });
    return (await asked("export", { method: "POST", body })).blob();
  },
  /** Resolves when the program has ended. */
  untilClosed: async () => {
    await fetch("until-closed").catch(() => undefined);
  },
};

async function base64(file: File): Promise<string> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  let text = "";
  // Spreading a whole file into arguments overflows the stack.
  for (let at = 0; at < bytes.length; at += 0x8000) {
    text += String.fromCharCode(...bytes.subarray(at, at + 0x8000));
  }
  return btoa(text);
}
