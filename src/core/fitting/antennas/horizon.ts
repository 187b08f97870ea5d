import { horizons } from '../../facts/radar-figures.ts';

const footM = 0.3048;

type Horizon = keyof typeof horizons;

/** One constant a horizon, for each root of a foot; a height in metres is converted exactly, so that both units agree. */
export const horizonPerRootM = (kind: Horizon): number => horizons[kind].value / Math.sqrt(footM);

/** Distance over which stations at some heights over the water, m, just see each other: the horizons of all of them. */
export const sightNm = (perRootM: number, heightsM: readonly number[]): number =>
  heightsM.reduce((sum, heightM) => sum + perRootM * Math.sqrt(Math.max(0, heightM)), 0);

/** Distance to the horizon from a height over the water; with more heights, between two stations. */
export const horizonNm = (kind: Horizon, ...heightsM: readonly number[]): number =>
  sightNm(horizonPerRootM(kind), heightsM);
