/** A message of the sidebar with a part that cannot be right, or of unknown parts. */
export const wrongMessageWords = (part: string): string =>
  `The sidebar sent ${part === "" ? "something" : part} that cannot be right. Close and open it again.`;
