/** The usual cautions at the foot of a page. */
export function Footer({ lines }: { readonly lines: readonly string[] }) {
  return (
    <footer>
      {lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </footer>
  );
}
