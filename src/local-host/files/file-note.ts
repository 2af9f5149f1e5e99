/** Something a coach should know about a file that was opened or saved; words in `file-sentences`. */
export type FileNote = {
  readonly code: string;
  readonly facts: Readonly<Record<string, string | number>>;
};

export function fileNote(code: string, facts: FileNote["facts"] = {}): FileNote {
  return { code, facts };
}
