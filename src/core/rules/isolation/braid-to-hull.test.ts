import { expect, test } from 'vitest';
import type { Kit } from '../../boat/boat-schema.ts';
import type { Earthing } from '../../boat/earthing.ts';
import { aSteelBoat, withMetal } from '../../steel-boat.test-helper.ts';
import { braidToHull } from './braid-to-hull.ts';
import { isolationFindings } from './isolation-case.test-helper.ts';

const radioAndWhip = (whip: Earthing, mount: Kit['mount']) =>
  withMetal(
    withMetal(aSteelBoat(), { id: 'set', kind: 'radio', mount: 'isolated', earthing: { braidTo: 'negative' } }),
    {
      id: 'whip',
      kind: 'radio-antenna',
      ...(mount === undefined ? {} : { mount }),
      earthing: { bodyTo: 'nothing', ...whip },
    },
  ).change((boat) => {
    for (const sheet of boat.sheets) {
      if (sheet.id !== 'set-sheet' && sheet.id !== 'whip-sheet') continue;
      sheet.plugs.push({ id: 'coax', connector: 'coax-plug', gender: 'male' });
      sheet.ports.push({
        id: 'rf',
        onPlug: 'coax',
        protocol: 'coax',
        role: sheet.id === 'whip-sheet' ? 'talk' : 'listen',
      });
    }
    boat.joins.push({
      id: 'lead',
      kind: 'coax',
      members: [
        { kit: 'whip', port: 'rf', as: 'talk' },
        { kit: 'set', port: 'rf', as: 'listen' },
      ],
      hold: 'fixed',
    });
  });

test('a whip on a pad, or one whose foot is not its braid, passes', () => {
  expect(isolationFindings(braidToHull, radioAndWhip({ braidTo: 'body' }, 'isolated'))).toEqual([]);
  expect(isolationFindings(braidToHull, radioAndWhip({ braidTo: 'nothing' }, 'metal'))).toEqual([]);
});

test('a whip bare on the rail takes the minus of the radio to the hull; the pad costs less than an isolator in the coax', () => {
  const [finding] = isolationFindings(braidToHull, radioAndWhip({ braidTo: 'body' }, 'metal'));
  expect(finding).toMatchObject({ level: 'fault', about: ['set', 'whip'] });
  expect(finding?.cure).toMatch(/^At whip: stand it on an insulating pad/);
});
