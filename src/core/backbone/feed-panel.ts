import type { BoatIndex } from '../boat/boat-index.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { limitIn } from '../boat/limit-in.ts';
import type { Panel } from '../boat/supply.ts';
import { busLimits } from '../facts/bus-limits.ts';
import type { Router } from '../ways/routes.ts';
import { panelNominalV } from './panel-volts.ts';
import { panelsUp } from './panels-up.ts';

/**
 * The panel that feeds a bus: the one with a circuit for it, else (proposed) the one with the shortest feed routes to the
 * bus's devices all together, panels on a start battery or on more volts than a bus stands only where there is no other.
 * Absent on a boat without panels.
 */
export const feedPanel = ({
  index,
  router,
  bus,
  devicePlaces,
}: {
  readonly index: BoatIndex;
  readonly router: Router;
  readonly bus: string;
  readonly devicePlaces: readonly string[];
}): Panel | undefined => {
  const panels = [...index.boat.supply.panels].sort((one, other) => byCodeUnit(one.id, other.id));
  const wired = panels.find((panel) => panel.circuits.some((circuit) => circuit.feeds.includes(bus)));
  if (wired !== undefined) return wired;
  const routesMm = (panel: Panel): number =>
    devicePlaces.reduce((sum, place) => {
      const route = router.between({ kind: 'feed', from: panel.place, to: place });
      return sum + (route?.mm ?? unreachedMm);
    }, 0);
  const ranked = panels.map((panel) => ({ panel, unfit: isUnfit(index, panel), mm: routesMm(panel) }));
  ranked.sort((one, other) => Number(one.unfit) - Number(other.unfit) || one.mm - other.mm);
  return ranked[0]?.panel;
};

/** Longer than any route, so that a panel which reaches fewer devices comes last. */
const unreachedMm = 1_000_000_000;

const isUnfit = (index: BoatIndex, panel: Panel): boolean =>
  index.banks.get(panelsUp(index, panel).source)?.for === 'start' ||
  panelNominalV(index, panel) > limitIn(busLimits, index.boat, 'nmea2000-device-volts-most');
