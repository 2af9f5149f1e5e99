import { unzipSync } from "fflate";
import { accept, type Outcome, refuse } from "../../../outcome";
import { limits } from "../limits";

/** The parts of an .xlsx file by their path inside it. */
export type Parts = ReadonlyMap<string, Uint8Array>;

/**
 * Takes an .xlsx file apart. What it claims to unpack to is added up before anything is unpacked, and
 * each part is unpacked into a room of just the size it claimed.
 *
 * @returns refuses `not-xlsx`, `unpacks-too-large` (a small file made to fill the memory) and
 * `part-outside` (facts `part`: a path that leaves the file)
 */
export function zipParts(bytes: Uint8Array): Outcome<Parts> {
  if (bytes.length > limits.fileBytes) return refuse("unpacks-too-large");
  let total = 0;
  let count = 0;
  let outside: string | null = null;
  let swollen = false;
  const claimed = new Map<string, number>();
  try {
    unzipSync(bytes, {
      filter: ({ name, size, originalSize }) => {
        count++;
        total += originalSize;
        swollen ||= originalSize > 1_000_000 && originalSize > limits.ratio * size;
        if (/(^|[/\\])\.\.([/\\]|$)|^[/\\]|^[A-Za-z]:|\0/.test(name)) outside ??= name;
        claimed.set(name, originalSize);
        return false;
      },
    });
    if (outside !== null) return refuse("part-outside", { part: outside });
    if (swollen || total > limits.unpackedBytes || count > limits.parts) {
      return refuse("unpacks-too-large");
    }
    const parts = new Map(Object.entries(unzipSync(bytes)));
    for (const [name, part] of parts) {
      if (part.length !== claimed.get(name)) return refuse("unpacks-too-large");
    }
    return parts.has("xl/workbook.xml") && parts.has("[Content_Types].xml")
      ? accept(parts)
      : refuse("not-xlsx");
  } catch {
    return refuse("not-xlsx");
  }
}
