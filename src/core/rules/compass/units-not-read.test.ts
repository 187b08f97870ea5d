import { expect, test } from 'vitest';
import type { Boat } from '../../boat/boat-schema.ts';
import { aCompassBoat } from '../../compass-boat.test-helper.ts';
import { compassFindings } from './compass-case.test-helper.ts';
import { headingFindings } from './heading-case.test-helper.ts';
import { unitsNotRead } from './units-not-read.ts';

const safe = { valueM: 0.3, how: 'papers' } as const;

/** The display comes right under the compass, and of all units nobody has read its plate alone. */
const unread = ({ aboveM = 2 }: { readonly aboveM?: number } = {}) =>
  aCompassBoat({ aboveM })
    .change(({ sheets }) => {
      for (const sheet of sheets) sheet.compassSafe = safe;
    })
    .sheet('small-display', (sheet) => {
      delete sheet.compassSafe;
      sheet.kind = 'fan';
    })
    .unit('display', { fate: 'comes' });

const found = (boat: Boat) => compassFindings(unitsNotRead, { boat });

test('a unit that comes within 5 m without a distance on its sheet is an advice, held against the 5 m of the standard', () => {
  const [finding, ...others] = found(unread().boat);
  expect(others).toEqual([]);
  expect(finding).toMatchObject({
    level: 'advice',
    about: ['card'],
    measured: { value: 2, unit: 'm' },
    limit: { value: 5, unit: 'm' },
  });
  expect(finding?.says).toBe(
    'One unit within 5 m of steering compass has no safe distance on its sheet: Helm display at 2.00 m.',
  );
});

test('several are one advice that counts them, the nearest first', () => {
  const { boat } = unread().add({
    places: [{ id: 'shelf', name: 'shelf', xM: 5, yM: 0.6, zM: 2.2, exposure: 'dry', reach: 'open', tees: false }],
    kit: [{ id: 'blower', name: 'Blower', sheet: 'small-display', fate: 'comes', place: 'shelf' }],
  });
  const findings = found(boat);
  expect(findings).toHaveLength(1);
  expect(findings[0]?.says).toBe(
    '2 units within 5 m of steering compass have no safe distance on their sheets: Blower at 1.20 m, Helm display at 2.00 m.',
  );
});

test('within a metre another rule speaks of it, from 5 m on nobody does', () => {
  const at = (aboveM: number) => found(unread({ aboveM }).boat);
  expect([0.99, 1, 4.99, 5].map((aboveM) => at(aboveM).length)).toEqual([0, 1, 1, 0]);
});

test('a distance on the sheet or one usual for the kind ends it, and so does a unit that draws nothing', () => {
  expect(found(unread().sheet('small-display', (sheet) => Object.assign(sheet, { compassSafe: safe })).boat)).toEqual(
    [],
  );
  expect(found(unread().sheet('small-display', (sheet) => Object.assign(sheet, { kind: 'display' })).boat)).toEqual([]);
  expect(found(unread().sheet('small-display', (sheet) => delete sheet.power).boat)).toEqual([]);
  expect(found(unread().sheet('small-display', (sheet) => Object.assign(sheet, { kind: 'tank-sender' })).boat)).toEqual(
    [],
  );
});

test('what stood there when the compass was swung is not spoken of; near a compass that comes it is', () => {
  expect(found(unread().unit('display', { fate: 'stays' }).boat)).toEqual([]);
  expect(found(unread().unit('display', { fate: 'stays' }).unit('card', { fate: 'comes' }).boat)).toHaveLength(1);
});

test('a magnetic heading sensor is told of them too, a satellite compass is not', () => {
  const { boat } = unread();
  const [finding] = headingFindings(unitsNotRead, {}, boat);
  expect(finding).toMatchObject({ level: 'advice', about: ['compass'] });
  expect(headingFindings(unitsNotRead, { magnetic: false }, boat)).toEqual([]);
});
