import type { BoatIndex } from '../../boat/boat-index.ts';
import { lengthMm } from '../../boat/measure.ts';
import type { Panel, Protection } from '../../boat/supply.ts';
import type { PanelEntry } from '../../panels-shape.ts';
import { ratingOf } from '../size-feed.ts';
import { allowedMm } from './main-place.ts';

/** What protects the wire to a panel from its source on: the rating, and what it is. */
export interface Guard {
  readonly ratingA: number;
  readonly by: NonNullable<PanelEntry['guardBy']>;
}

/** Whether the main of a panel stands so near the other end of its feeder that it guards all of it. */
const isAtSource = (main: Protection | undefined): boolean =>
  main?.distance !== undefined && main.kind !== 'none' && lengthMm(main.distance).nominalMm <= allowedMm(main);

const ownMain = ({ mainA, main }: Panel): Guard[] =>
  mainA === undefined || main?.kind === 'none' ? [] : [{ ratingA: mainA, by: 'panel-main' }];

const bankMain = (index: BoatIndex, id: string): Guard[] => {
  const main = index.banks.get(id)?.main;
  return main?.ratingA === undefined || main.kind === 'none' ? [] : [{ ratingA: main.ratingA, by: 'bank-main' }];
};

const circuitsAbove = (index: BoatIndex, panel: Panel): Guard[] => {
  const above = index.panels.get(panel.from);
  return (above?.circuits ?? []).flatMap((circuit) =>
    above !== undefined && circuit.feeds.includes(panel.id)
      ? [{ ratingA: ratingOf(index, { panel: above, circuit }), by: 'circuit' as const }]
      : [],
  );
};

const converterOf = (index: BoatIndex, id: string): Guard[] =>
  index.boat.supply.dcdc.flatMap((converter) =>
    converter.id === id ? [{ ratingA: converter.ratedA, by: 'converter' as const }] : [],
  );

/** What stands before the feeder at its source, without the main of the panel itself. */
const before = (index: BoatIndex, panel: Panel, seen: ReadonlySet<string>): Guard[] => {
  const straight = [...bankMain(index, panel.from), ...circuitsAbove(index, panel), ...converterOf(index, panel.from)];
  const above = index.panels.get(panel.from);
  if (straight.length > 0 || above === undefined || seen.has(above.id)) return straight;
  const its = [...ownMain(above), ...before(index, above, new Set([...seen, above.id]))];
  const [least] = its.sort((one, other) => one.ratingA - other.ratingA);
  return least === undefined ? [] : [{ ratingA: least.ratingA, by: 'panel-above' }];
};

/**
 * What protects the wire to a panel against a short anywhere along it: the least of what stands at its source, be it the main
 * of the bank, the circuit above or a main of its own that is near enough. Where nothing is known to stand there it is the
 * panel's own main, wherever it sits. Undefined where there is none.
 */
export const feederGuard = (index: BoatIndex, panel: Panel): Guard | undefined => {
  const atSource = before(index, panel, new Set([panel.id]));
  const own = ownMain(panel);
  const guards = atSource.length === 0 || isAtSource(panel.main) ? [...atSource, ...own] : atSource;
  return guards.sort((one, other) => one.ratingA - other.ratingA)[0];
};
