/** A DOM element with properties and children; text is never read as HTML. */
export function element<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  properties: Partial<HTMLElementTagNameMap[Tag]>,
  ...children: readonly (Node | string)[]
): HTMLElementTagNameMap[Tag] {
  const made = Object.assign(document.createElement(tag), properties);
  made.append(...children);
  return made;
}
