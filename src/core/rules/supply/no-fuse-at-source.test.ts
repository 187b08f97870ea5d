import { expect, test } from 'vitest';
import { noFuseAtSource } from './no-fuse-at-source.ts';
import { startBank, supplyFindings, withSupply } from './supply-case.test-helper.ts';

test('a panel whose main stands before its feeder, and a bank with a main, pass', () => {
  expect(supplyFindings(noFuseAtSource, withSupply())).toEqual([]);
  const guarded = withSupply((bank, panel) => {
    delete panel.mainA;
    bank.main = { kind: 'fuse', ratingA: 50 };
  });
  expect(supplyFindings(noFuseAtSource, guarded)).toEqual([]);
});

test('a main fuse whose rating nobody has read is a fuse', () => {
  const unread = withSupply((bank, panel) => {
    delete panel.mainA;
    bank.main = { kind: 'fuse' };
  });
  expect(supplyFindings(noFuseAtSource, unread)).toEqual([]);
});

test('said to be none it is a danger, and a doubt where nobody has said', () => {
  const bare = withSupply((bank, panel) => {
    delete panel.mainA;
    bank.main = { kind: 'none' };
  });
  expect(supplyFindings(noFuseAtSource, bare)).toMatchObject([{ level: 'danger', about: ['house', 'main-panel'] }]);
  const unsaid = withSupply((_, panel) => {
    delete panel.mainA;
  });
  expect(supplyFindings(noFuseAtSource, unsaid)).toMatchObject([{ level: 'doubt', about: ['house', 'main-panel'] }]);
});

test('a starting bank with nothing on it but the starter needs none', () => {
  const cranking = withSupply((bank, _, boat) => {
    bank.main = { kind: 'fuse', ratingA: 50 };
    boat.supply.banks.push({ ...startBank('apart'), main: { kind: 'none' } });
  });
  expect(supplyFindings(noFuseAtSource, cranking)).toEqual([]);
});
