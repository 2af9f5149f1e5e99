import type { IncomingMessage } from "node:http";

/** Larger than any squad's workbook; a guard against filling the memory by mistake. */
const usualMost = 200 * 1024 * 1024;

/**
 * The whole body of a request. Rejects past 200 MB, and before reading when the request says so
 * itself: nothing of it is held.
 */
export async function requestBody(
  request: Pick<IncomingMessage, "headers"> & AsyncIterable<Buffer>,
  mostBytes = usualMost,
): Promise<Buffer> {
  const tooLarge = new Error("The workbook is larger than 200 MB.");
  if (Number(request.headers["content-length"] ?? 0) > mostBytes) throw tooLarge;
  const parts: Buffer[] = [];
  let size = 0;
  for await (const part of request) {
    size += part.length;
    if (size > mostBytes) throw tooLarge;
    parts.push(part);
  }
  return Buffer.concat(parts);
}

/** The body read as JSON. Rejects with a sentence when it is none. */
export async function requestJson(request: Parameters<typeof requestBody>[0]): Promise<unknown> {
  const text = (await requestBody(request)).toString("utf8");
  try {
    return JSON.parse(text);
  } catch {
    throw new Error("The page sent something that cannot be read. Load it again.");
  }
}
