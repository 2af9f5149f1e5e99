type Waiting = {
  readonly success?: (value: unknown, object: unknown) => void;
  readonly failure?: (error: Error, object: unknown) => void;
  readonly object?: unknown;
};

/**
 * Runs inside the sidebar's sandbox, before its own scripts: `google.script.run` as the platform
 * offers it, over messages to the page. It is injected as text, so it leans on nothing outside.
 */
export function sidebarBridge(): void {
  let calls = 0;
  const waiting = new Map<number, Waiting>();
  addEventListener("message", ({ source, data }) => {
    if (source !== parent || !data) return;
    if (data.kind === "undone") dispatchEvent(new Event("undone"));
    if (data.kind !== "answer") return;
    const call = waiting.get(data.id);
    waiting.delete(data.id);
    if (data.sentence === undefined) call?.success?.(data.value, call.object);
    else if (call?.failure) call.failure(new Error(data.sentence), call.object);
    else console.error(data.sentence);
  });
  const runner = (handlers: Waiting): unknown =>
    new Proxy(
      {},
      {
        get: (_target, name) => {
          if (typeof name === "symbol") return undefined;
          if (name === "withSuccessHandler") {
            return (success: Waiting["success"]) =>
              runner({ ...handlers, ...(success && { success }) });
          }
          if (name === "withFailureHandler") {
            return (failure: Waiting["failure"]) =>
              runner({ ...handlers, ...(failure && { failure }) });
          }
          if (name === "withUserObject") {
            return (object: unknown) => runner({ ...handlers, object });
          }
          return (...args: unknown[]) => {
            calls += 1;
            waiting.set(calls, handlers);
            parent.postMessage({ kind: "call", id: calls, name, args }, "*");
          };
        },
      },
    );
  addEventListener("keydown", (event) => {
    if (event.key !== "F6" || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    parent.postMessage({ kind: "next pane" }, "*");
  });
  const host = {
    close: () => parent.postMessage({ kind: "close" }, "*"),
    setHeight: () => {},
    setWidth: () => {},
  };
  Object.assign(window, { google: { script: { run: runner({}), host } } });
}
