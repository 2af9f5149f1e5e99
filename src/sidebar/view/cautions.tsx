/** The usual cautions, small, at the end of every page that proposes or judges. */
export function Cautions({ lines }: { readonly lines: readonly string[] }) {
  return (
    <div class="cautions small soft">
      {lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </div>
  );
}
