/** What of a wave comes back, by the standing-wave ratio there: 1 nothing, without end all of it. */
const reflection = (swr: number): number => (swr - 1) / (swr + 1);

/** How far below what is sent the wave stands that comes back, dB. */
export const returnLossDb = (swr: number): number => -20 * Math.log10(reflection(swr));

/** Share of the power that comes back, percent. */
export const reflectedPct = (swr: number): number => 100 * reflection(swr) ** 2;

/** What the mismatch takes of the power, dB. */
export const mismatchLossDb = (swr: number): number => -10 * Math.log10(1 - reflection(swr) ** 2);

/** What is read at the radio with an antenna of some ratio behind a cable: a lossy cable flatters, for it eats the wave twice. */
export const swrAtRadio = ({ antennaSwr, cableDb }: { antennaSwr: number; cableDb: number }): number => {
  const back = 10 ** (-(returnLossDb(antennaSwr) + 2 * cableDb) / 20);
  return (1 + back) / (1 - back);
};
