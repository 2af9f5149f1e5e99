/** The add-on's menu and title. */
export const menuWords = {
  title: "Holdline",
  openSidebar: "Open sidebar",
  highlight: "Highlight the Squad tab",
} as const;
