/** An empty box to write in by hand; its width in millimetres. */
export function Box({ mm, hint }: { readonly mm: number; readonly hint?: string }) {
  return (
    <span class="box" style={`width:${mm}mm`}>
      {hint !== undefined && <i>{hint}</i>}
    </span>
  );
}
