import type { Fault } from '../../fault.ts';
import { circuit, converterOf, soundPanel, wiredSheet, wiredUnit, withMore } from '../../supply-parts.ts';

/** Both radios hang on one converter, put in for the hum. */
export const supplyOneConverterForAllRadio: Fault = {
  rule: 'supply/one-converter-for-all-radio',
  about: ['radio-converter', 'radio', 'radio-two'],
  plant: (before) => {
    const boat = withMore(before, {
      sheets: [wiredSheet('radio-two-kind', { kind: 'vhf-radio' })],
      kit: [wiredUnit('radio-two', 'second radio')],
      dcdc: [converterOf('radio-converter', { ratedA: 8 })],
      panels: [
        soundPanel('radio-panel', 'radio-converter', {
          place: 'panel-locker',
          mainA: 8,
          circuits: [circuit('c-radio-one', ['radio.dc']), circuit('c-radio-two', ['radio-two.dc'])],
        }),
      ],
    });
    // what fed the radio feeds the converter
    const panels = boat.supply.panels.map((panel) => ({
      ...panel,
      circuits: panel.circuits.map((entry) =>
        entry.id === 'c-radio'
          ? { ...entry, ratingA: 25, feeds: entry.feeds.map((fed) => (fed === 'radio.dc' ? 'radio-converter' : fed)) }
          : entry,
      ),
    }));
    return { ...boat, supply: { ...boat.supply, panels } };
  },
};
