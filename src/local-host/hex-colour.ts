/** "rgb(253, 224, 196)" as "#fde0c4"; a colour in any other form is given back as it is. */
export function hexColour(colour: string): string {
  const parts = /^rgb\(\s*(\d+)\s*,\s*(\d+)\s*,\s*(\d+)\s*\)$/.exec(colour);
  if (!parts) return colour;
  return `#${parts
    .slice(1)
    .map((part) => Number(part).toString(16).padStart(2, "0"))
    .join("")}`;
}
