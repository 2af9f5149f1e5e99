/** "1 place needs a look" */
export const needsALook = (count: number): string =>
  `${count} ${count === 1 ? "place needs" : "places need"} a look`;
