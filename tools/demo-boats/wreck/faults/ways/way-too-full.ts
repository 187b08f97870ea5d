import type { Boat, Cable } from '../../../../../src/core/boat/boat-schema.ts';
import type { Sheet } from '../../../../../src/core/boat/sheet.ts';
import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';

const fanSheet: Sheet = {
  id: 'seat-fan',
  name: 'Fan under a seat',
  kind: 'pump',
  source: 'typical',
  sourceNote: 'Invented for this boat.',
  compassSafe: { valueM: 0.5, how: 'papers' },
  plugs: [{ id: 'leads', connector: 'leads', gender: 'none' }],
  ports: [{ id: 'dc', onPlug: 'leads', protocol: 'dc', role: 'listen' }],
  power: [{ port: 'dc', typical: 0.2, max: 0.3, unit: 'A', behaves: 'current', minV: 10, maxV: 16, fuseA: 3 }],
};

const oldCoax = (id: string): Cable => ({
  id,
  kind: 'coax',
  from: { place: 'panel-locker' },
  to: { place: 'seat-box' },
  ways: ['w-full'],
  length: taped(1.8),
  diameterMm: 10.3,
  condition: 'good',
  fate: 'stays',
});

const withFeed = ({ supply }: Boat): Boat['supply'] => ({
  ...supply,
  panels: supply.panels.map((panel) =>
    panel.id === 'switches'
      ? {
          ...panel,
          circuits: [...panel.circuits, { id: 'c-fan', ratingA: 3, kind: 'breaker', feeds: ['seat-fan-1.dc'] }],
        }
      : panel,
  ),
});

/** Two old coaxes stay in a 20 mm pipe to the seat, and the lead of a new fan is to go through it as well. */
export const waysWayTooFull: Fault = {
  rule: 'ways/way-too-full',
  about: ['w-full'],
  plant: (boat) => ({
    ...boat,
    places: [
      ...boat.places,
      {
        id: 'seat-box',
        name: 'box under the seat',
        xM: 4.1,
        yM: 0.4,
        zM: 0.9,
        exposure: 'dry',
        reach: 'open',
        tees: false,
      },
    ],
    ways: [
      ...boat.ways,
      {
        id: 'w-full',
        ends: ['panel-locker', 'seat-box'],
        length: taped(1.6),
        kind: 'conduit',
        known: 'seen',
        bore: { mm: 20, how: 'taped' },
      },
    ],
    cables: [...boat.cables, oldCoax('seat-coax-1'), oldCoax('seat-coax-2')],
    sheets: [...boat.sheets, fanSheet],
    kit: [
      ...boat.kit,
      { id: 'seat-fan-1', name: 'fan under the seat', sheet: 'seat-fan', fate: 'comes', place: 'seat-box' },
    ],
    supply: withFeed(boat),
  }),
};
