/** A header is looked for among so many first rows. */
export const rowsSearched = 40;
