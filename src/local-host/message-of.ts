/** What a thrown thing says; it may come from another realm. */
export function messageOf(error: unknown): string {
  return error !== null && typeof error === "object" && "message" in error
    ? String(error.message)
    : String(error);
}
