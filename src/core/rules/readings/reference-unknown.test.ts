import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { indexBoat } from '../../boat/boat-index.ts';
import type { Need } from '../../boat/boat-schema.ts';
import type { Sends } from '../../boat/sheet.ts';
import { joinsOf } from '../../joins/joins-of.ts';
import { arrivals } from '../../readings/arrivals.ts';
import { refitOf } from '../../readings/refit.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { referenceUnknown } from './reference-unknown.ts';

/** The small boat, her display wanting heading in a reference; what the sensor and the receiver send besides. */
const boatOf = ({
  wants,
  gnssSends = [],
  hears = [],
}: {
  wants?: Need['reference'];
  gnssSends?: Sends[];
  hears?: number[];
}) =>
  aBoat()
    .with({
      needs: [{ reading: 'heading', at: 'display', must: true, ...(wants === undefined ? {} : { reference: wants }) }],
    })
    .sheet('gnss-receiver', (sheet) => {
      for (const port of sheet.ports) port.sends = [...(port.sends ?? []), ...gnssSends];
    })
    .sheet('small-display', (sheet) => {
      for (const port of sheet.ports.filter(({ id }) => id === 'n2k'))
        port.hears = [...(port.hears ?? []), ...hears.map((pgn) => ({ pgn }))];
    }).boat;
const found = (sketch: Parameters<typeof boatOf>[0]) => findingsOf(referenceUnknown, { boat: boatOf(sketch) });
const variation = { gnssSends: [{ pgn: 127258 }], hears: [127258] };

test('heading wanted in no reference passes', () => {
  expect(found({})).toEqual([]);
});

test('heading wanted true from a sensor that may send either, without variation, is a doubt', () => {
  expect(found({ wants: 'true' })).toMatchObject([
    {
      level: 'doubt',
      id: 'readings/reference-unknown:compass.n2k,display,display.n2k:true',
      says: expect.stringMatching(/^Helm display wants heading as true\. Heading sensor at the mast sends it/),
    },
  ]);
});

test('heading wanted magnetic is no better known', () => {
  expect(found({ wants: 'magnetic' })).toHaveLength(1);
});

test('with variation at the screen it passes, and variation that the screen does not hear does not help', () => {
  expect(found({ wants: 'true', ...variation })).toEqual([]);
  expect(found({ wants: 'true', gnssSends: variation.gnssSends })).toHaveLength(1);
});

test('what the screen itself asks for counts like a need', () => {
  const boat = aBoat().sheet('small-display', (sheet) => {
    for (const port of sheet.ports)
      for (const heard of port.hears ?? []) if (heard.pgn === 127250) heard.wants = { reference: 'true' };
  }).boat;
  expect(findingsOf(referenceUnknown, { boat })).toHaveLength(1);
});

test('a heading that does not arrive is left to the rule for what is missing', () => {
  const boat = aBoat().with({ needs: [{ reading: 'heading', at: 'radio', must: true, reference: 'true' }] }).boat;
  const index = indexBoat(boat);
  expect(
    arrivals(
      refitOf(index, (phase) => joinsOf(index, phase)),
      1,
    ).map(({ arrives }) => arrives),
  ).toEqual([false]);
  expect(findingsOf(referenceUnknown, { boat })).toEqual([]);
});
