import { panelsUp } from '../../backbone/panels-up.ts';
import type { BoatIndex } from '../../boat/boat-index.ts';
import { byCodeUnit } from '../../boat/ids.ts';
import type { Panel } from '../../boat/supply.ts';
import type { PanelEntry } from '../../panels-shape.ts';
import { banksUp } from './banks-up.ts';
import { circuitEntry } from './circuit-entry.ts';
import { blockFor, circuitRoom, type WantedAt } from './circuit-room.ts';
import { type Draws, drawEntry } from './draw.ts';
import { feederEntry } from './feeder-entry.ts';
import { feederGuard } from './feeder-guard.ts';
import { mainEntry, type Needed, neededBehind } from './main-entry.ts';
import { panelFaultA } from './panel-fault.ts';
import { panelV } from './panel-v.ts';

/** What panels are told from: the boat, what hangs on them, and what wants a circuit in each phase. */
export interface PanelInput {
  readonly index: BoatIndex;
  readonly draws: Draws;
  readonly phases: readonly WantedAt[];
}

/** Fault current asked on a panel; the main of one that hangs on a bank is a main, that of every other stands behind one. */
const neededOn = (index: BoatIndex, panel: Panel): ((position: 'main' | 'branch') => Needed) => {
  const { source } = panelsUp(index, panel);
  const bank = index.banks.get(source);
  return (position) => (bank === undefined ? { amps: 0, by: 'limits-itself' } : neededBehind(index, bank, position));
};

/** What guards a panel and its feeder, and the current of a short there. */
const guardParts = (
  index: BoatIndex,
  panel: Panel,
): Pick<PanelEntry, 'guardA' | 'guardBy' | 'main' | 'faultA' | 'branchA'> => {
  const needed = neededOn(index, panel);
  const guard = feederGuard(index, panel);
  const faultA = panelFaultA(index, panel);
  return {
    ...(guard === undefined ? {} : { guardA: guard.ratingA, guardBy: guard.by }),
    main: mainEntry({
      main: panel.main,
      ratingA: panel.mainA,
      needed: needed(index.banks.has(panel.from) ? 'main' : 'branch'),
    }),
    ...(faultA === undefined ? {} : { faultA }),
    branchA: needed('branch').amps,
  };
};

/** Everything the plan tells of one panel. */
export const panelEntry = ({ index, draws, phases }: PanelInput, panel: Panel): PanelEntry => {
  const last = Math.max(1, ...phases.map(({ phase }) => phase));
  const feeder = feederEntry(index, panel);
  const room = circuitRoom(index, panel, phases);
  const takes = blockFor(index, panel, { room, phases });
  return {
    panel: panel.id,
    from: panel.from,
    source: panelsUp(index, panel).source,
    banks: banksUp(index, panel.id)
      .banks.map(({ id }) => id)
      .sort(byCodeUnit),
    nominalV: panelV(index, panel),
    ...(panel.tapV === undefined ? {} : { tap: true }),
    ...(feeder === undefined ? {} : { feeder }),
    ...guardParts(index, panel),
    circuits: panel.circuits.map((circuit) => circuitEntry({ index, draws, panel, circuit, last })),
    ...(panel.freeWays === undefined ? {} : { freeWays: panel.freeWays }),
    room,
    ...(takes === undefined ? {} : { takes }),
    ...drawEntry(draws.panel(panel)),
  };
};
