import type { BoatIndex } from '../../boat/boat-index.ts';
import { byCodeUnit } from '../../boat/ids.ts';
import type { Dcdc } from '../../boat/supply.ts';
import type { ConverterEntry } from '../../panels-shape.ts';
import { circuitsByTarget } from '../circuits-by-target.ts';
import { banksUp } from './banks-up.ts';
import { type Draws, drawEntry } from './draw.ts';
import { panelV } from './panel-v.ts';

/** Everything the plan tells of one converter. */
export const converterEntry = (index: BoatIndex, draws: Draws, converter: Dcdc): ConverterEntry => {
  const fed = circuitsByTarget(index).get(converter.id);
  const panel = index.panels.get(fed?.panel ?? '');
  return {
    converter: converter.id,
    ...(fed === undefined ? {} : fed),
    ...(panel === undefined ? {} : { inV: panelV(index, panel) }),
    outV: converter.outV,
    ratedA: converter.ratedA,
    isolated: converter.isolated,
    serves: [...index.panels.values()]
      .filter(({ id }) => banksUp(index, id).converters.includes(converter))
      .map(({ id }) => id)
      .sort(byCodeUnit),
    ...drawEntry(draws.source(converter.id)),
    ...(panel === undefined ? {} : { takesA: draws.taken(converter, panel).mostA }),
  };
};
