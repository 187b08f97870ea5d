/** Levels from which charts give the height of a bridge. Which one holds is printed on the chart; there is no usual one. */
export const bridgeDatums = ['hat', 'mhw', 'mhws', 'mhhw', 'fixed-level'] as const;
export type BridgeDatum = (typeof bridgeDatums)[number];
