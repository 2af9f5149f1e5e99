import type { Host } from "../host";
import { messageOf } from "../message-of";
import type { WorkbookData } from "../workbook-data";

/** How long typing may pause before the workbook is written. */
const pauseMs = 800;

/** How long the results of what was typed are waited for. */
export const resultsMs = 10_000;

export type SaveState =
  | { readonly state: "saved" }
  | { readonly state: "saving" }
  | { readonly state: "failed"; readonly sentence: string };

/**
 * Writes the workbook after each change, one write at a time, the newest state last. Where results take
 * long, what was typed is written without them, and once more with them.
 */
export function autosave(
  host: Pick<Host, "settled" | "workbook" | "onChange">,
  save: (workbook: WorkbookData) => Promise<void>,
  tell: (state: SaveState) => void,
): { readonly now: () => Promise<void>; readonly isPending: () => boolean } {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let changed = false;
  let writing: Promise<void> | null = null;

  const write = async () => {
    const calculated = await host.settled(resultsMs).then(
      () => true,
      () => false,
    );
    changed = false;
    tell({ state: "saving" });
    try {
      await save(host.workbook());
      if (!calculated) later();
      if (!changed) tell({ state: "saved" });
    } catch (error) {
      changed = true;
      tell({ state: "failed", sentence: messageOf(error) });
    }
  };
  const now = async () => {
    clearTimeout(timer);
    while (writing) await writing;
    writing = write();
    await writing;
    writing = null;
  };
  const later = () => {
    clearTimeout(timer);
    timer = setTimeout(() => void now(), pauseMs);
  };
  host.onChange(() => {
    changed = true;
    later();
  });
  return { now, isPending: () => changed || writing !== null };
}
