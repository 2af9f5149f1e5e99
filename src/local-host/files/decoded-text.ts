import { type FileNote, fileNote } from "./file-note";

/**
 * Bytes of a text file as text: UTF-8 or UTF-16 by its mark, else Windows' western letters, said. Null
 * for a picture or another file that holds no text: no letter is a zero byte but in UTF-16.
 */
export function decodedText(
  bytes: Uint8Array,
  file: string,
): { readonly text: string; readonly notes: readonly FileNote[] } | null {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) {
    return { text: new TextDecoder("utf-16le").decode(bytes), notes: [] };
  }
  if (bytes[0] === 0xfe && bytes[1] === 0xff) {
    return { text: new TextDecoder("utf-16be").decode(bytes), notes: [] };
  }
  if (bytes.includes(0)) return null;
  try {
    return { text: new TextDecoder("utf-8", { fatal: true }).decode(bytes), notes: [] };
  } catch {
    const text = new TextDecoder("windows-1252").decode(bytes);
    return { text, notes: [fileNote("letters-guessed", { file })] };
  }
}
