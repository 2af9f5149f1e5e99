import { type FileNote, fileNote } from "./file-note";

/** Bytes of a text file as text: UTF-8 or UTF-16 by its mark, else Windows' western letters, said. */
export function decodedText(
  bytes: Uint8Array,
  file: string,
): { readonly text: string; readonly notes: readonly FileNote[] } {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) {
    return { text: new TextDecoder("utf-16le").decode(bytes), notes: [] };
  }
  if (bytes[0] === 0xfe && bytes[1] === 0xff) {
    return { text: new TextDecoder("utf-16be").decode(bytes), notes: [] };
  }
  try {
    return { text: new TextDecoder("utf-8", { fatal: true }).decode(bytes), notes: [] };
  } catch {
    const text = new TextDecoder("windows-1252").decode(bytes);
    return { text, notes: [fileNote("letters-guessed", { file })] };
  }
}
