import type { Host } from "../host";

/** Puts what is being typed into its cell: who presses a button does not press Enter first. */
export async function endTyping({ engine: { book } }: Pick<Host, "engine">): Promise<void> {
  if (book.isCellEditing()) await book.endEditingAsync(true);
}
