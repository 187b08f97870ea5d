/** Names as owners give them run on after a comma; one that is long is cut there. */
export const shortName = (name: string): string => (name.length > 40 ? (name.split(',')[0] ?? name) : name);
