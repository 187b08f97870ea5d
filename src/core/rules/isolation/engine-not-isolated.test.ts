import { expect, test } from 'vitest';
import { aSteelBoat, withMetal } from '../../steel-boat.test-helper.ts';
import { engineNotIsolated } from './engine-not-isolated.ts';
import { isolationFindings } from './isolation-case.test-helper.ts';

const engine = (poles: 'block' | 'isolated', place = 'mast-base') =>
  withMetal(aSteelBoat(), { id: 'diesel', kind: 'engine', place, mount: 'metal', earthing: { poles } });

test('an engine with isolated poles passes, and so does one with its block as minus that stands at the named point', () => {
  expect(isolationFindings(engineNotIsolated, engine('isolated'))).toEqual([]);
  expect(isolationFindings(engineNotIsolated, engine('block', 'battery-box'))).toEqual([]);
});

test('one with its block as minus elsewhere is a fault, cheapest cured at its feet', () => {
  const [finding] = isolationFindings(engineNotIsolated, engine('block'));
  expect(finding).toMatchObject({ level: 'fault', about: ['diesel'] });
  expect(finding?.cure).toMatch(/^At diesel: insulate its feet/);
});

test('a sender that is its own minus undoes the isolation of its engine, even where the engine stands on pads', () => {
  const boat = withMetal(engine('isolated').unit('diesel', { mount: 'isolated' }), {
    id: 'sender',
    kind: 'sender',
    place: 'mast-base',
    mount: 'metal',
    earthing: { bodyTo: 'negative' },
  });
  expect(isolationFindings(engineNotIsolated, boat)).toMatchObject([{ level: 'fault', about: ['sender'] }]);
});
