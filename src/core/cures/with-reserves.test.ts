import { describe, expect, test } from 'vitest';
import { anExample } from '../../../tests/an-example.test-helper.ts';
import type { Failure, VitalEntry } from '../blackouts-shape.ts';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { edits } from '../boat/edits/index.ts';
import type { Cure } from '../plan-shape.ts';
import { quickPlan } from '../quick-plan.test-helper.ts';

const keyOf = ({ fails, how }: Failure): string => `${how} ${fails}`;
const vitalsIn = (boat: Boat): VitalEntry[] => quickPlan(boat).vitals;
const withEdits = (boat: Boat, cure: Cure): Boat =>
  cure.edits.reduce((at, { edit, params }) => edits[edit as keyof typeof edits].apply(at, params), boat);

/** The Tern with a second panel that has a circuit to spare. */
const spared = aBoat().change((draft) => {
  draft.supply.panels.push({
    id: 'second',
    place: 'helm',
    from: 'house',
    circuits: [{ id: 'spare', ratingA: 10, kind: 'fuse', feeds: [] }],
  });
}).boat;

describe('a single point', () => {
  test('of the last radio is cured by one that hangs on nothing aboard, with its price', () => {
    const radio = vitalsIn(aBoat().boat).find(({ of }) => of === 'radio');
    expect(radio?.cures).toMatchObject([
      { cost: 45_000, edits: [{ edit: 'add-unit', params: { sheet: 'vhf-handheld' } }] },
    ]);
    expect(radio?.points.every(({ cure }) => cure === 0)).toBe(true);
  });

  test('of one breaker for screen and radio is cured by a free circuit of another panel, the cheapest first', () => {
    const radio = vitalsIn(spared).find(({ of }) => of === 'radio');
    const cure = radio?.cures[0];
    expect(cure?.edits).toEqual([{ edit: 'feed-port', params: { port: 'radio.dc', circuit: 'second.spare' } }]);
    const freed = radio?.points.filter((point) => point.cure === 0).map(keyOf);
    expect(freed).toContain('fuse main-panel.helm-circuit');
    expect(freed).not.toContain('unit radio');
  });

  test('that no edit frees has none, and says what a person has at hand', () => {
    const position = vitalsIn(aBoat().boat).find(({ of }) => of === 'position');
    const bank = position?.points.find(({ how }) => how === 'bank');
    expect(bank).toBeDefined();
    expect(bank?.cure).toBeUndefined();
    expect(position?.carry).toContain('chart');
  });

  test.each(['gannet', 'sandpiper'])(
    'on %s is gone for good with each cure made and the whole plan made anew',
    (name) => {
      const boat = anExample(name);
      const before = quickPlan(boat);
      let tried = 0;
      for (const { of, points, cures } of before.vitals)
        for (const [at, cure] of cures.entries()) {
          const after = quickPlan(withEdits(boat, cure));
          const left = new Set(after.vitals.find((vital) => vital.of === of)?.points.map(keyOf));
          // a trunk laid anew has other stretches: units, fuses and panels are the same
          const same = points.filter(
            (point) => point.cure === at && ['bank', 'fuse', 'panel', 'unit'].includes(point.how),
          );
          for (const point of same) expect(left).not.toContain(keyOf(point));
          const arrived = new Set(
            after.readings.filter(({ arrives }) => arrives).map(({ reading, at: screen }) => `${reading} ${screen}`),
          );
          for (const entry of before.readings)
            if (entry.arrives) expect(arrived).toContain(`${entry.reading} ${entry.at}`);
          tried += 1;
        }
      expect(tried).toBeGreaterThan(0);
    },
  );
});
