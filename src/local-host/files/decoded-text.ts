import { type FileNote, fileNote } from "./file-note";

/**
 * Windows' western letters from 0x80 to 0x9f, with a stop for each byte that is none (WHATWG Encoding
 * Standard, index windows-1252). Node 20 takes these bytes for control signs, which nobody sees.
 */
const windowsLetters = "€.‚ƒ„…†‡ˆ‰Š‹Œ.Ž..‘’“”•–—˜™š›œ.žŸ";

function westernText(bytes: Uint8Array): string {
  return new TextDecoder("latin1").decode(bytes).replace(/[\u0080-\u009f]/g, (sign) => {
    const letter = windowsLetters[sign.charCodeAt(0) - 0x80]!;
    return letter === "." ? sign : letter;
  });
}

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
    return { text: westernText(bytes), notes: [fileNote("letters-guessed", { file })] };
  }
}
