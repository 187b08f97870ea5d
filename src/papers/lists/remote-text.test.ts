import { expect, test } from 'vitest';
import { indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { emptyPlan } from '../../core/empty-plan.test-helper.ts';
import { gatewayAndPilot, remoteBoat, remoteOf } from '../../core/remote/remote-boat.test-helper.ts';
import { handOverSteps, remoteRows } from './remote-rows.ts';
import { remoteText, securityPaper } from './remote-text.ts';

const boatWith = (owner: NonNullable<Boat['kit'][number]['remote']>): Boat =>
  remoteBoat(gatewayAndPilot, {
    gate: { kind: 'gateway', owner },
    pilot: { kind: 'pilot-computer', steers: true },
  });
const planOf = (boat: Boat) => ({ ...emptyPlan, findings: [], remote: remoteOf(boat) });

test('a way in is told with what it reaches and whether it may write', () => {
  const open = boatWith({});
  expect(remoteText(open, planOf(open)).join(' ').replaceAll(/\s+/g, ' ')).toBe(
    'REMOTE HANDS - Wifi of gate: reaches no other unit by the network; not known whether it may write; the pilot, pilot, through gate: perhaps, nobody has looked.',
  );
  const shut = boatWith({ writes: 'listen-only' });
  expect(remoteRows(indexBoat(shut), planOf(shut))[0]?.fact).toBe('reaches no other unit by the network; listens only');
});

test('the security page says who holds a password and what to do on handing over', () => {
  const boat = boatWith({ writes: 'listen-only', password: 'changed', heldBy: ['owner', 'yard'], guests: 'air' });
  const page = securityPaper(boat, planOf(boat));
  expect(page).toContain('Wifi of gate, for guests');
  expect(page).toContain('Password: changed from the one it came with; held by the owner and the yard.');
  expect(page).toContain('1. Change the password of gate');
  expect(Math.max(...page.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
});

test('a password nobody has said anything of is to be asked for, and none is to be set', () => {
  const points = (boat: Boat) => remoteRows(indexBoat(boat), planOf(boat))[0]?.points.at(-1)?.fact;
  expect(points(boatWith({}))).toBe('not known: ask, and change it; nobody has said who holds it');
  expect(points(boatWith({ password: 'none' }))).toBe('none: set one');
});

test('a boat without wifi has no steps and says so', () => {
  const boat = remoteBoat({ units: {}, joins: {} }, {});
  expect(handOverSteps(indexBoat(boat), planOf(boat))).toEqual([]);
  expect(securityPaper(boat, planOf(boat))).toContain('No wifi and no link ashore is aboard.');
  expect(remoteText(boat, planOf(boat))).toEqual([]);
});
