/** Speeds written in one cell, in order; null where one is missing. Unread pieces are kept as text. */
export type SpeedList = {
  readonly speeds: readonly (number | null)[];
  /** Each place as written. */
  readonly pieces: readonly string[];
  readonly unread: readonly string[];
  /** A piece carries "?" and is not used without asking. */
  readonly unsure: readonly string[];
};

const number = /^(?:\d{1,4}(?:[.,]\d{1,4})?|[.,]\d{1,4})(\?*)$/;
/** What nearly every cell holds: points inside the numbers, one space between them. */
const usual = /^\d\.\d{1,4}(?: \d\.\d{1,4})+$/;
/** Letters of the longest list anybody writes; what is longer would take the square of its length. */
const longest = 1000;
const missing = /^[-–—x×]$|^n\/?a$|^\?$/i;

/**
 * Takes "0.62 0.60 0.57", "0,62/0,61", ".62; .61", "0.62, 0.60" and "0,67 / 0,66 / " apart. A missing
 * piece between or after slashes is null, never zero.
 */
export function speedList(text: string): SpeedList {
  if (usual.test(text)) {
    const pieces = text.split(" ");
    return { speeds: pieces.map(Number), pieces, unread: [], unsure: [] };
  }
  if (text.length > longest) return { speeds: [null], pieces: [text], unread: [text], unsure: [] };
  const bare = text.trim().replace(/\s*[cm]?m\/s$/i, "");
  const slashed = /[/;|]/.test(bare);
  let pieces = slashed ? bare.split(/[/;|]/) : bare.split(/\s/);
  // With points inside the numbers, commas stand between them.
  pieces = pieces.flatMap((piece) =>
    /\.\d/.test(piece) ? piece.split(",") : [piece.replace(/,$/, "")],
  );
  pieces = pieces.flatMap((piece) =>
    /\d\s+[\d.,]/.test(piece) ? piece.trim().split(/\s+/) : [piece],
  );
  const speeds: (number | null)[] = [];
  const written: string[] = [];
  const unread: string[] = [];
  const unsure: string[] = [];
  for (const raw of pieces) {
    const piece = raw.trim();
    if (piece === "" && !slashed) continue;
    written.push(piece);
    const parts = number.exec(piece);
    if (parts !== null && parts[1] === "") speeds.push(Number(piece.replace(",", ".")));
    else {
      speeds.push(null);
      if (parts !== null) unsure.push(piece);
      else if (piece !== "" && !missing.test(piece)) unread.push(piece);
    }
  }
  return { speeds, pieces: written, unread, unsure };
}

/** The cell's text with one piece of a list put right, the rest as it was; null when it is not there. */
export function withPiece(text: string, piece: string, value: number): string | null {
  const bare = piece.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
  const comma = /,\d/.test(text) && !text.includes(".");
  // A comma inside the numbers parts nothing: 62 is no piece of "0,62".
  const [before, after] = comma ? ["[\\s/;|]", "[\\s/;|]|,\\s"] : ["[\\s/;|,]", "[\\s/;|,]"];
  const place = new RegExp(`(^|${before})${bare}(?=$|${after})`);
  if (!place.test(text)) return null;
  const mended = comma ? String(value).replace(".", ",") : String(value);
  return text.replace(place, (_, left: string) => `${left}${mended}`);
}
