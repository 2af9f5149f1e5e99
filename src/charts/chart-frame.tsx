import type { ComponentChildren } from "preact";

/** Width in the drawing's own units of a chart that fills the sidebar. */
export const chartWidth = 276;

/** A chart as wide as its place, told in words to whoever cannot see it. */
export function ChartFrame({
  height,
  title,
  inWords,
  children,
}: {
  readonly height: number;
  readonly title: string;
  readonly inWords: string;
  readonly children: ComponentChildren;
}) {
  return (
    <svg
      class="chart"
      viewBox={`0 0 ${chartWidth} ${height}`}
      width="100%"
      role="img"
      aria-label={`${title}. ${inWords}`}
    >
      <title>{title}</title>
      <desc>{inWords}</desc>
      {children}
    </svg>
  );
}
