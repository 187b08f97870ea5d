import { aBoat, type BoatBuilder } from './boat/a-boat.test-helper.ts';

/** The Tern with a steering compass on the dash top, as far above the helm as said. */
export const aCompassBoat = ({ aboveM = 0.5 }: { readonly aboveM?: number } = {}): BoatBuilder =>
  aBoat().add({
    places: [
      {
        id: 'dash-top',
        name: 'dash top',
        xM: 5,
        yM: 0.6,
        zM: 1.4 + aboveM,
        exposure: 'dry',
        reach: 'open',
        tees: false,
      },
    ],
    ways: [
      {
        id: 'helm-top',
        ends: ['helm', 'dash-top'],
        length: { valueM: aboveM + 0.1, how: 'taped' },
        kind: 'open',
        known: 'seen',
      },
    ],
    sheets: [
      { id: 'card-compass', name: 'Card compass', kind: 'steering-compass', source: 'typical', plugs: [], ports: [] },
    ],
    kit: [{ id: 'card', name: 'steering compass', sheet: 'card-compass', fate: 'stays', place: 'dash-top' }],
  });
