import { readStack } from "../rows/value/stack";

/** Ground contacts of one session at most: more is rather a slip of the keys (common practice, no source). */
export const mostContacts = 120;

/** Why what is typed into a field of next week's view cannot be right; "" when it can. */
export const fieldRefusals = {
  contacts: (text: string): string =>
    /^\d{1,3}$/.test(text) && Number(text) <= mostContacts
      ? ""
      : `Contacts are a whole number from 0 to ${mostContacts}. Nothing was changed.`,
  /** A blank leaves the stack as it is proposed. */
  stack: (text: string): string =>
    text.trim() === "" || readStack(text).ok
      ? ""
      : "Write the plates from the bottom up as 5x15+5. Nothing was changed.",
} as const;
