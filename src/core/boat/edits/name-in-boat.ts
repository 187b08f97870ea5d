/** The name of the entry with some id, for a sentence; the id itself where there is none. */
export const nameInBoat = (list: readonly { readonly id: string; readonly name: string }[], id: string): string =>
  list.find((entry) => entry.id === id)?.name ?? id;
