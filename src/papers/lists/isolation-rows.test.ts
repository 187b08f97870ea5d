import { expect, test } from 'vitest';
import { aBoat, type BoatBuilder } from '../../core/boat/a-boat.test-helper.ts';
import { indexBoat } from '../../core/boat/boat-index.ts';
import { plan } from '../../core/plan.ts';
import { aSteelBoat, withMetal } from '../../core/steel-boat.test-helper.ts';
import { isolationRows } from './isolation-rows.ts';

const rowsOf = ({ boat }: BoatBuilder) => isolationRows(indexBoat(boat), plan(boat, new Map()), 'EUR');

test('a contact is told with its joints in order, what parts them and about what that costs', () => {
  const rows = rowsOf(
    withMetal(aSteelBoat(), { id: 'amp', kind: 'amplifier', mount: 'metal', earthing: { bodyTo: 'negative' } }),
  );
  expect(rows[0]?.fact).toBe('the minus may meet it at battery box only; 1 other contact found');
  expect(rows[1]).toMatchObject({ what: 'The minus meets the hull', lights: ['amp'] });
  expect(rows[1]?.fact).toMatch(
    /^amp: its case is its minus; amp stands bare on the hull; to part them: At amp: stand it on an insulating pad.+\(about 15\.00 EUR\)$/,
  );
});

test('units that nobody has looked at are one row, which says what to measure', () => {
  const rows = rowsOf(withMetal(aSteelBoat(), { id: 'dome', kind: 'radar' }));
  expect(rows.find(({ key }) => key === 'unknown')).toMatchObject({ what: 'Not looked at yet', lights: ['dome'] });
});

test('of a boat that is not of metal only the shields are told, and where to earth them', () => {
  expect(rowsOf(aBoat()).map(({ what, fact }) => `${what}: ${fact}`)).toEqual([
    expect.stringMatching(/^Shield of Navigation bus: earth it once, at .+ where the bus is fed, and nowhere else$/),
  ]);
  const twice = aBoat().change((boat) => {
    for (const bus of boat.buses) bus.shieldAt = ['helm', 'locker'];
  });
  expect(rowsOf(twice)[0]?.fact).toBe('earthed 2 times, at helm dash and at electrical locker; keep one');
  const nowhere = aBoat().change((boat) => {
    for (const bus of boat.buses) bus.shieldAt = [];
  });
  expect(rowsOf(nowhere)[0]?.fact).toBe('earthed nowhere; earth it at one point');
});

test('a network cable is named by the units it joins', () => {
  const eth = { id: 'eth', onPlug: 'net', protocol: 'ethernet', role: 'both' } as const;
  const socket = { id: 'net', connector: 'rj45', gender: 'female' } as const;
  const boat = aBoat()
    .sheet('small-display', (sheet) => {
      sheet.earthing = { shieldTo: 'negative' };
      sheet.plugs.push(socket);
      sheet.ports.push(eth);
    })
    .sheet('fixed-radio', (sheet) => {
      sheet.plugs.push(socket);
      sheet.ports.push(eth);
    })
    .change((draft) => {
      const members = ['display', 'radio'].map((kit) => ({ kit, port: 'eth', as: 'both' as const }));
      draft.joins.push({ id: 'patch', kind: 'ethernet', members, hold: 'fixed' });
    });
  expect(rowsOf(boat).find(({ key }) => key === 'shield patch')).toMatchObject({
    what: 'Shield of the cable of Helm display and Old radio',
    fact: 'earthed once, on the minus of Helm display',
  });
});
