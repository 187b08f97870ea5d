import type { Fault } from '../../fault.ts';

/** The screens were put on the breaker of the radio. */
export const supplyOneFuseTakesAll: Fault = {
  rule: 'supply/one-fuse-takes-all',
  about: ['c-radio', 'switches'],
  plant: (boat) => {
    const screens = ['display.dc', 'plotter-old.dc'];
    const panels = boat.supply.panels.map((panel) => ({
      ...panel,
      circuits: panel.circuits
        .filter(({ id }) => id !== 'c-display' && id !== 'c-plotter')
        .map((entry) =>
          entry.id === 'c-radio' ? { ...entry, fusedEach: true, feeds: [...entry.feeds, ...screens] } : entry,
        ),
    }));
    return { ...boat, supply: { ...boat.supply, panels } };
  },
};
