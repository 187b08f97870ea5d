import type { BoatIndex } from '../../boat/boat-index.ts';
import { banksUp } from '../../power/source-side/banks-up.ts';
import type { LoadEntry } from '../../power-shape.ts';
import type { Rule } from '../rule.ts';
import { radiosAboard } from './radios.ts';
import { aFew, fedName, someNames, unitOf } from './supply-words.ts';

/** The panel that a load hangs on by a circuit of its own. */
const panelOf = ({ source }: LoadEntry): string[] => (source.by === 'circuit' ? [source.panel] : []);

/** Whether everything that a radio draws comes through one converter. */
const isBehind =
  (index: BoatIndex, loads: readonly LoadEntry[], converter: string) =>
  (radio: string): boolean => {
    const panels = loads.filter(({ port }) => unitOf(port) === radio).flatMap(panelOf);
    const throughIt = (panel: string): boolean => banksUp(index, panel).converters.some(({ id }) => id === converter);
    return panels.length > 0 && panels.every(throughIt);
  };

/** Where one converter feeds every radio, its failure leaves none to call with. */
export const oneConverterForAllRadio: Rule = {
  id: 'supply/one-converter-for-all-radio',
  level: 'fault',
  title: 'One converter feeds every radio.',
  sources: ['cfr-46-28-860', 'practice-separate-feeds'],
  check: ({ index, plan }) => {
    const radios = radiosAboard(index);
    if (radios.length < 2) return [];
    return plan.converters
      .filter(({ converter }) => radios.every(isBehind(index, plan.loads, converter)))
      .map(({ converter }) => ({
        about: [converter, ...aFew(radios)],
        says: `The converter ${converter} feeds every radio aboard: ${someNames(radios.map((radio) => fedName(index, radio)))}. When it fails there is none left to call with.`,
        measured: { value: radios.length, unit: 'radios' },
        cure: 'Feed one of them past it: by a converter of its own, or from a battery of its own voltage.',
      }));
  },
};
