import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import type { Finding } from '../../plan-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { severalSources } from './several-sources.ts';

const found = (boat: Boat, phase = 1): Finding[] => findingsOf(severalSources, { boat, plan: { phase } });

/** The small boat with a second receiver of its kind. */
const withSecondReceiver = (number?: number): Boat =>
  aBoat()
    .add({
      kit: [
        {
          id: 'gnss-spare',
          name: 'Spare GNSS',
          sheet: 'gnss-receiver',
          fate: 'comes',
          place: 'mast-base',
          ...(number === undefined
            ? {}
            : {
                instances: (['position', 'course-speed-ground'] as const).map((reading) => ({
                  port: 'n2k',
                  reading,
                  instance: number,
                })),
              }),
        },
      ],
    })
    .change((boat) => {
      boat.joins.find((join) => join.id === 'nav-join')?.members.push({ kit: 'gnss-spare', port: 'n2k', as: 'both' });
    }).boat;

test('one sender of each reading passes', () => {
  expect(found(aBoat().boat)).toEqual([]);
});

test('two receivers alike are a doubt for each reading both send', () => {
  const findings = found(withSecondReceiver());
  expect(findings.map(({ id }) => id)).toContain('identities/several-sources:gnss,gnss-spare,nav:position');
  expect(findings.every(({ level, about }) => level === 'doubt' && about.includes('gnss-spare'))).toBe(true);
});

test('a second receiver with a number of its own is told apart', () => {
  expect(found(withSecondReceiver(1)).filter(({ id }) => id.endsWith(':position'))).toEqual([]);
});

test('the old receiver that leaves in the second phase doubles the new one until then, by the joins of each phase', () => {
  const alike = withSecondReceiver();
  const leaves = { fate: 'goes', phase: 2 } as const;
  const boat = { ...alike, kit: alike.kit.map((unit) => (unit.id === 'gnss-spare' ? { ...unit, ...leaves } : unit)) };
  expect(found(boat, 1)).not.toEqual([]);
  expect(found(boat, 2)).toEqual([]);
});

test('a reading whose source the owner has named is not told', () => {
  const boat: Boat = { ...withSecondReceiver(), sources: [{ reading: 'position', primary: 'gnss.n2k' }] };
  const ids = found(boat).map(({ id }) => id);
  expect(ids.some((id) => id.endsWith(':position'))).toBe(false);
  expect(ids.length).toBeGreaterThan(0);
});
