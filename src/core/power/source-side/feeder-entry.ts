import type { BoatIndex } from '../../boat/boat-index.ts';
import { lengthMm } from '../../boat/measure.ts';
import type { Panel } from '../../boat/supply.ts';
import { feedInsulation } from '../../facts/power-limits.ts';
import { copperOhmPerM } from '../../network/copper-ohm.ts';
import type { PanelEntry } from '../../panels-shape.ts';
import { ampacity } from '../ampacity.ts';
import { conductorsOf } from '../conductors-of.ts';
import { panelV } from './panel-v.ts';

/** Conductors of a feeder that carry current: out and back, alone in its bundle. */
const carryingConductors = 2;

/** Whether a feeder starts or ends in an engine space; the way between is drawn nowhere. */
const isHot = (index: BoatIndex, panel: Panel): boolean => {
  const source = index.banks.get(panel.from) ?? index.panels.get(panel.from);
  return [source?.place, panel.place].some((place) => index.places.get(place ?? '')?.exposure === 'engine');
};

/**
 * The wire to a panel: its length, what it may carry for long by the metric table, and the volts it loses at the panel's main
 * rating, E = 2 L rho / A x I at its longest.
 */
export const feederEntry = (index: BoatIndex, panel: Panel): PanelEntry['feeder'] => {
  const { feeder, mainA } = panel;
  if (feeder === undefined) return undefined;
  const { nominalMm, longestMm } = lengthMm(feeder.length);
  const engineSpace = isHot(index, panel);
  const own = { lengthM: nominalMm / 1000, longestM: longestMm / 1000, engineSpace };
  const { areaMm2 } = feeder;
  if (areaMm2 === undefined) return own;
  const size = conductorsOf('metric').findLast((entry) => entry.areaMm2 <= areaMm2 + 1e-9)?.size;
  const may =
    size === undefined
      ? undefined
      : ampacity({ system: 'metric', size, insulationC: feedInsulation.metric.value, engineSpace, carryingConductors });
  const lostV = mainA === undefined ? undefined : 2 * own.longestM * copperOhmPerM({ areaMm2 }) * mainA;
  return {
    ...own,
    areaMm2,
    ...(may === undefined ? {} : { ampacityA: may.allowedA }),
    ...(mainA === undefined || lostV === undefined
      ? {}
      : { dropAtA: mainA, dropV: lostV, dropPct: (100 * lostV) / panelV(index, panel) }),
  };
};

/** Loop resistance of a feeder at its shortest, ohm: a short there gives most; none where length or size is not known. */
export const leastFeederOhm = ({ feeder }: Panel): number =>
  feeder?.areaMm2 === undefined
    ? 0
    : (2 * copperOhmPerM({ areaMm2: feeder.areaMm2 }) * lengthMm(feeder.length).shortestMm) / 1000;
