import type { BoatPattern, PatternPlace, PatternWay } from '../pattern.ts';

/** Places that a trawler, a river cruiser and a workboat have alike: a wheelhouse amidships, a mast aft of it. */
const places: readonly PatternPlace[] = [
  { id: 'bow-locker', name: 'chain locker', at: [0.92, 0, 0.08], exposure: 'damp', reach: 'open' },
  {
    id: 'fore-cabin',
    name: 'locker in the fore cabin, on the centreline',
    at: [0.78, 0.1, 0.04],
    exposure: 'dry',
    reach: 'panel',
    tees: true,
  },
  {
    id: 'sensor-well',
    name: 'bilge forward of the engine, with the depth fitting',
    at: [0.66, 0.12, -0.5],
    exposure: 'bilge',
    reach: 'panel',
  },
  {
    id: 'fore-step',
    name: 'hollow behind the steps from the wheelhouse to the fore cabin',
    at: [0.63, 0.2, 0.08],
    exposure: 'dry',
    reach: 'panel',
    tees: true,
  },
  { id: 'helm', name: 'wheelhouse helm, face of the dash', at: [0.59, 0.3, 0.18], exposure: 'dry', reach: 'open' },
  {
    id: 'helm-back',
    name: 'inside of the wheelhouse console',
    at: [0.6, 0.3, 0.14],
    exposure: 'dry',
    reach: 'open',
    tees: true,
    spares: 1,
  },
  {
    id: 'compass-place',
    name: 'steering compass on the dash, before the wheel',
    at: [0.605, 0, 0.185],
    exposure: 'dry',
    reach: 'open',
  },
  {
    id: 'headliner',
    name: 'wheelhouse headliner, radios',
    at: [0.53, 0.2, 0.255],
    exposure: 'dry',
    reach: 'panel',
    tees: true,
  },
  { id: 'roof', name: 'wheelhouse roof, antenna rail', at: [0.5, -0.4, 0.272], exposure: 'weather', reach: 'open' },
  {
    id: 'elec-panel',
    name: 'main panel, aft bulkhead of the wheelhouse',
    at: [0.44, -0.5, 0.16],
    exposure: 'dry',
    reach: 'open',
    tees: true,
    spares: 1,
  },
  {
    id: 'saloon',
    name: 'locker in the aft house, starboard',
    at: [0.3, 0.5, 0.1],
    exposure: 'dry',
    reach: 'panel',
    tees: true,
  },
  { id: 'engine', name: 'main engine', at: [0.48, 0, -0.15], exposure: 'engine', reach: 'panel' },
  {
    id: 'battery-box',
    name: 'house batteries beside the engine',
    at: [0.4, -0.45, 0.0],
    exposure: 'damp',
    reach: 'panel',
  },
  {
    id: 'battery-start',
    name: 'start battery beside the engine',
    at: [0.4, 0.45, 0.0],
    exposure: 'damp',
    reach: 'panel',
  },
  { id: 'fuel-tank', name: 'fuel tank, sender plate', at: [0.36, 0.6, 0.01], exposure: 'damp', reach: 'panel' },
  { id: 'water-tank', name: 'water tank, sender plate', at: [0.72, -0.2, -0.1], exposure: 'damp', reach: 'panel' },
  {
    id: 'steering-gear',
    name: 'steering gear under the aft deck',
    at: [0.09, 0.1, 0.03],
    exposure: 'damp',
    reach: 'panel',
  },
  { id: 'lazarette', name: 'lazarette', at: [0.12, 0.3, 0.05], exposure: 'damp', reach: 'open', tees: true },
  {
    id: 'stern-rail',
    name: 'stern rail, port',
    at: [0.02, -0.6, 0.15],
    exposure: 'weather',
    reach: 'open',
    outside: true,
  },
  {
    id: 'mast-foot',
    name: 'foot of the mast on the roof of the aft house',
    at: [0.4, 0.05, 0.19],
    exposure: 'weather',
    reach: 'open',
  },
];

const ways: readonly PatternWay[] = [
  { ends: ['bow-locker', 'fore-cabin'] },
  { ends: ['fore-cabin', 'fore-step'] },
  { ends: ['fore-step', 'sensor-well'] },
  { ends: ['fore-cabin', 'water-tank'] },
  { ends: ['fore-step', 'helm-back'] },
  { ends: ['helm-back', 'helm'] },
  { ends: ['helm', 'compass-place'], near: ['steering-compass'] },
  { ends: ['helm-back', 'headliner'], kind: 'conduit', boreMm: 32 },
  { ends: ['headliner', 'roof'], kind: 'gland', boreMm: 25, through: 'deck' },
  { ends: ['headliner', 'mast-foot'], kind: 'gland', boreMm: 32, through: 'deck' },
  { ends: ['headliner', 'elec-panel'] },
  { ends: ['helm-back', 'elec-panel'], kind: 'tray' },
  { ends: ['elec-panel', 'saloon'] },
  { ends: ['saloon', 'lazarette'] },
  { ends: ['lazarette', 'steering-gear'] },
  { ends: ['lazarette', 'stern-rail'], kind: 'gland', boreMm: 20, through: 'deck' },
  { ends: ['elec-panel', 'battery-box'], kind: 'tray', through: 'fire', near: ['starter-cable'] },
  { ends: ['battery-box', 'engine'], near: ['starter-cable'] },
  { ends: ['engine', 'battery-start'], near: ['starter-cable'] },
  { ends: ['engine', 'fuel-tank'] },
];

const highMast: readonly PatternPlace[] = [
  {
    id: 'mast-bracket',
    name: 'bracket on the mast, scanner',
    at: [0.4, 0, 0.72],
    aloft: true,
    outside: true,
    exposure: 'weather',
    reach: 'hard',
  },
  {
    id: 'masthead',
    name: 'top of the mast',
    at: [0.4, 0, 0.97],
    aloft: true,
    outside: true,
    exposure: 'weather',
    reach: 'aloft',
    tees: true,
  },
];

const upHighMast: readonly PatternWay[] = [
  { ends: ['mast-foot', 'mast-bracket'], kind: 'mast', boreMm: 40 },
  { ends: ['mast-bracket', 'masthead'], kind: 'mast', boreMm: 40 },
];

const supply = {
  houseAt: 'battery-box',
  startAt: 'battery-start',
  panelAt: 'elec-panel',
  nominalV: 12,
} as const;

/** A trawler yacht: one engine, a raised wheelhouse, a mast with a scanner. */
export const trawler: BoatPattern = {
  id: 'trawler',
  name: 'trawler yacht, raised wheelhouse',
  kind: 'trawler',
  material: 'grp',
  places: [...places, ...highMast],
  ways: [...ways, ...upHighMast],
  masts: [{ foot: 'mast-foot', stepped: 'deck' }],
  supply,
};

/** A cruiser of canals and rivers: low under bridges, her short mast folds down. */
export const riverCruiser: BoatPattern = {
  id: 'river-cruiser',
  name: 'cruiser for canals and rivers',
  kind: 'river-cruiser',
  material: 'steel',
  places: [
    ...places,
    {
      id: 'masthead',
      name: 'top of the folding mast',
      at: [0.4, 0, 0.97],
      aloft: true,
      outside: true,
      exposure: 'weather',
      reach: 'hard',
    },
  ],
  ways: [...ways, { ends: ['mast-foot', 'masthead'], kind: 'mast', boreMm: 25 }],
  masts: [{ foot: 'mast-foot', stepped: 'deck' }],
  supply,
};

/** A workboat of steel with a wheelhouse, watertight bulkheads and a 24 V supply. */
export const steelWorkboat: BoatPattern = {
  id: 'steel-workboat',
  name: 'workboat of steel',
  kind: 'steel-workboat',
  material: 'steel',
  places: [...places, ...highMast],
  ways: [
    ...ways.map((way): PatternWay => {
      const isRated = way.ends.includes('fore-cabin') && way.ends.includes('fore-step');
      return isRated ? { ...way, kind: 'gland', boreMm: 40, through: 'watertight' } : way;
    }),
    ...upHighMast,
  ],
  masts: [{ foot: 'mast-foot', stepped: 'deck' }],
  supply: { ...supply, nominalV: 24 },
};
