import { expect, test } from 'vitest';
import { fuseTooFarFromSource } from './fuse-too-far-from-source.ts';
import { exactly, supplyFindings, withSupply } from './supply-case.test-helper.ts';

const at = (valueM: number, more: { sheathed?: boolean; moreM?: number } = {}) =>
  withSupply((bank) => {
    const { sheathed, moreM = 0 } = more;
    bank.main = {
      kind: 'fuse',
      ratingA: 50,
      distance: { ...exactly(valueM), moreM },
      ...(sheathed === undefined ? {} : { sheathed }),
    };
  });

test.each([
  ['PW-60 (33 CFR 183.455(b)): 170 mm in the open', at(0.17), []],
  ['178 mm in the open', at(0.178), []],
  ['PW-61: 600 mm in the open', at(0.6), ['fault']],
  ['PW-62: 1000 mm in conduit', at(1, { sheathed: true }), []],
  ['1.5 m in conduit from a battery, which trade wording lets pass', at(1.5, { sheathed: true }), ['doubt']],
  ['1.9 m in conduit', at(1.9, { sheathed: true }), ['fault']],
  ['150 mm that may be 250', at(0.15, { moreM: 0.1 }), ['doubt']],
] as const)('%s', (_, boat, levels) => {
  expect(supplyFindings(fuseTooFarFromSource, boat).map(({ level }) => level)).toEqual(levels);
});

test('it tells how far it is and how far it may be', () => {
  expect(supplyFindings(fuseTooFarFromSource, at(0.6))).toMatchObject([
    { about: ['house'], measured: { value: 600, unit: 'mm' }, limit: { value: 178, unit: 'mm' } },
  ]);
});

test('the main of a panel counts where nothing stands before it, and where it sits must be known', () => {
  expect(supplyFindings(fuseTooFarFromSource, withSupply())).toMatchObject([
    { level: 'doubt', about: ['house', 'main-panel'] },
  ]);
  const behind = withSupply((bank, panel) => {
    bank.main = { kind: 'fuse', ratingA: 50, distance: exactly(0.1) };
    panel.main = { kind: 'breaker', distance: exactly(3) };
  });
  expect(supplyFindings(fuseTooFarFromSource, behind)).toEqual([]);
  const first = withSupply((_, panel) => {
    panel.main = { kind: 'breaker', distance: exactly(3) };
  });
  expect(supplyFindings(fuseTooFarFromSource, first)).toMatchObject([{ level: 'fault' }]);
});
