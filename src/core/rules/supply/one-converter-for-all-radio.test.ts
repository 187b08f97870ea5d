import { expect, test } from 'vitest';
import { oneConverterForAllRadio } from './one-converter-for-all-radio.ts';
import { converter, subPanel, supplyFindings, withSupply } from './supply-case.test-helper.ts';

/** Two radios, the old one and its twin, on the panels given. */
const radiosOn = (first: string, second: string) =>
  withSupply((_, panel, boat) => {
    const old = boat.kit.find(({ id }) => id === 'radio');
    if (old !== undefined) boat.kit.push({ ...old, id: 'twin', name: 'Second radio' });
    boat.supply.dcdc.push(converter('conv'), converter('other'));
    panel.circuits = [{ id: 'to-both', ratingA: 20, kind: 'fuse', feeds: ['conv', 'other'] }];
    const feedsOf = (id: string): string[] => [
      ...(first === id ? ['radio.dc'] : []),
      ...(second === id ? ['twin.dc'] : []),
    ];
    panel.circuits.push({ id: 'straight', ratingA: 10, kind: 'fuse', feeds: feedsOf('main-panel') });
    boat.supply.panels.push(subPanel('low', 'conv', feedsOf('low')), subPanel('else', 'other', feedsOf('else')));
  });

test('both behind one converter is a fault', () => {
  expect(supplyFindings(oneConverterForAllRadio, radiosOn('low', 'low'))).toMatchObject([
    { level: 'fault', about: ['conv', 'radio', 'twin'] },
  ]);
});

test('one past it, each on its own, and one that nothing feeds yet, pass', () => {
  for (const second of ['main-panel', 'else', 'nowhere']) {
    expect(supplyFindings(oneConverterForAllRadio, radiosOn('low', second))).toEqual([]);
  }
});

test('a lone radio goes with whatever feeds it', () => {
  const lone = withSupply((_, panel, boat) => {
    boat.supply.dcdc.push(converter('conv'));
    panel.circuits = [{ id: 'to-conv', ratingA: 20, kind: 'fuse', feeds: ['conv'] }];
    boat.supply.panels.push(subPanel('low', 'conv', ['radio.dc']));
  });
  expect(supplyFindings(oneConverterForAllRadio, lone)).toEqual([]);
});
