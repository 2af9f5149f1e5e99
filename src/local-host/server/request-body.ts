import type { IncomingMessage } from "node:http";

/** Larger than any squad's workbook; a guard against filling the memory by mistake. */
const mostBytes = 200 * 1024 * 1024;

/** The whole body of a request. Rejects past 200 MB. */
export async function requestBody(request: IncomingMessage): Promise<Buffer> {
  const parts: Buffer[] = [];
  let size = 0;
  for await (const part of request as AsyncIterable<Buffer>) {
    size += part.length;
    if (size > mostBytes) throw new Error("The workbook is larger than 200 MB.");
    parts.push(part);
  }
  return Buffer.concat(parts);
}
