import type { BoatPattern, PatternPlace, PatternWay } from '../pattern.ts';

/** What an open boat and a rigid inflatable have alike: a console, an outboard, a post aft. */
const places: readonly PatternPlace[] = [
  { id: 'bow-locker', name: 'bow locker', at: [0.9, 0, 0.08], exposure: 'spray', reach: 'open' },
  {
    id: 'fore-locker',
    name: 'locker forward of the console, dry box in it',
    at: [0.62, 0.1, 0.06],
    exposure: 'damp',
    reach: 'panel',
    tees: true,
  },
  { id: 'helm', name: 'face of the console', at: [0.44, 0.08, 0.175], exposure: 'spray', reach: 'open' },
  {
    id: 'helm-back',
    name: 'inside of the console',
    at: [0.46, 0.1, 0.12],
    exposure: 'damp',
    reach: 'open',
    tees: true,
    spares: 1,
  },
  {
    id: 'compass-place',
    name: 'compass on top of the console',
    at: [0.48, -0.08, 0.188],
    exposure: 'spray',
    reach: 'open',
  },
  {
    id: 'elec-panel',
    name: 'switch panel on the side of the console',
    at: [0.42, -0.2, 0.13],
    exposure: 'damp',
    reach: 'open',
    tees: true,
  },
  { id: 'battery-box', name: 'batteries in the console', at: [0.44, 0.12, 0.07], exposure: 'damp', reach: 'panel' },
  {
    id: 'fuel-tank',
    name: 'fuel tank under the sole, sender plate',
    at: [0.35, 0, 0.03],
    exposure: 'damp',
    reach: 'panel',
  },
  {
    id: 'stern-locker',
    name: 'stern locker, starboard',
    at: [0.1, 0.5, 0.06],
    exposure: 'damp',
    reach: 'open',
    tees: true,
  },
  {
    id: 'sensor-well',
    name: 'transom, leads of the transducer',
    at: [0.03, 0.3, 0.03],
    exposure: 'bilge',
    reach: 'open',
  },
  { id: 'engine', name: 'outboard', at: [-0.02, 0, 0.12], outside: true, exposure: 'weather', reach: 'open' },
  { id: 'post-foot', name: 'foot of the post aft', at: [0.1, 0.2, 0.07], exposure: 'damp', reach: 'open' },
];

const ways: readonly PatternWay[] = [
  { ends: ['bow-locker', 'fore-locker'], kind: 'conduit', boreMm: 32 },
  { ends: ['fore-locker', 'helm-back'], kind: 'conduit', boreMm: 40 },
  { ends: ['helm-back', 'helm'] },
  { ends: ['helm', 'compass-place'], near: ['steering-compass'] },
  { ends: ['helm-back', 'elec-panel'] },
  { ends: ['elec-panel', 'battery-box'] },
  { ends: ['helm-back', 'fuel-tank'], kind: 'conduit', boreMm: 40 },
  { ends: ['helm-back', 'stern-locker'], kind: 'conduit', boreMm: 50, near: ['starter-cable'] },
  { ends: ['stern-locker', 'sensor-well'] },
  { ends: ['stern-locker', 'engine'], kind: 'conduit', boreMm: 50, near: ['starter-cable'] },
  { ends: ['stern-locker', 'post-foot'] },
  { ends: ['post-foot', 'arch-top'], kind: 'conduit', boreMm: 32 },
];

const supply = {
  houseAt: 'battery-box',
  startAt: 'battery-box',
  panelAt: 'elec-panel',
  nominalV: 12,
} as const;

/** An open boat with a console and an outboard. */
export const openBoat: BoatPattern = {
  id: 'open-boat',
  name: 'open boat with a console',
  kind: 'open-boat',
  material: 'grp',
  places: [
    ...places,
    {
      id: 'arch-top',
      name: 'top of the post: light, antennas',
      at: [0.1, 0, 0.95],
      aloft: true,
      outside: true,
      exposure: 'weather',
      reach: 'open',
    },
  ],
  ways,
  supply,
};

/** A rigid inflatable: the same console, a frame aft, tubes round her. */
export const rigidInflatable: BoatPattern = {
  id: 'rigid-inflatable',
  name: 'rigid inflatable with a console',
  kind: 'rigid-inflatable',
  material: 'grp',
  places: [
    ...places.map((place) => (place.id === 'post-foot' ? { ...place, name: 'foot of the frame aft' } : place)),
    {
      id: 'arch-top',
      name: 'top of the frame aft: light, antennas',
      at: [0.1, 0, 0.95],
      aloft: true,
      outside: true,
      exposure: 'weather',
      reach: 'open',
    },
  ],
  ways,
  supply,
};
