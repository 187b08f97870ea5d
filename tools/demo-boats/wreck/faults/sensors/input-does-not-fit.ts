import type { Fault } from '../../fault.ts';
import { withJoin } from '../../on-steel.ts';
import { withSited, withSounder } from '../../sited-units.ts';

/** The old element of 50 kHz behind a new box for 200 kHz. */
export const sensorsInputDoesNotFit: Fault = {
  rule: 'sensors/input-does-not-fit',
  about: ['old-element', 'echo-box'],
  plant: (boat) =>
    withJoin(
      withSited(
        withSounder(boat, {
          kit: { id: 'old-element', name: 'old depth element', fate: 'stays' },
          frequenciesKHz: [50],
        }),
        {
          kit: { id: 'echo-box', name: 'new box for the old element', fate: 'stays' },
          place: 'fore-cabin',
          sheet: {
            kind: 'sounder',
            compassSafe: { valueM: 0.1, how: 'papers' },
            plugs: [{ id: 'lead', connector: 'leads', gender: 'none' }],
            ports: [
              { id: 'echo', onPlug: 'lead', protocol: 'analog', role: 'listen', hears: [{ reading: 'sonar-picture' }] },
            ],
            sensor: { signals: [{ port: 'echo', frequenciesKHz: [200], powerW: 100 }] },
          },
        },
      ),
      {
        id: 'echo-lead',
        kind: 'analog',
        members: [
          { kit: 'old-element', port: 'echo', as: 'talk' },
          { kit: 'echo-box', port: 'echo', as: 'listen' },
        ],
      },
    ),
};
