import type { HullLine, hullShapes } from './hull-shapes.ts';

/**
 * The lines of each hull from astern, in the path language of the hull shapes with two differences: the first number of a
 * pair is the height, the second the share of the half beam, negative to port. Drawn in this order.
 * Source: drawn-hull-shapes (project choice).
 */
const mast = (top: string, halfShare: number): HullLine => ({
  role: 'spar',
  path: `M.1 -${halfShare}L${top} -${halfShare * 0.7}L${top} 0`,
  mirror: 'join',
});

const pilothouse: readonly HullLine[] = [
  { role: 'spar', path: 'M.39 0L1a 0' },
  { role: 'trim', path: 'M.31 -.68L.34 -.66', mirror: 'copy' },
  {
    role: 'house',
    path: 'M.24 -.76L.372 -.66C.39 -.64 .398 -.6 .398 -.54L.398 0L.38 0L.38 -.52C.38 -.56 .376 -.58 .366 -.59L.24 -.69Z',
    mirror: 'copy',
  },
  { role: 'house', path: 'M.238 -.74L.31 -.7L.312 0', mirror: 'join' },
  { role: 'house', path: 'M.08 -.8L.236 -.76C.24 -.75 .24 -.74 .24 -.72L.24 0', mirror: 'join' },
  { role: 'glass', path: 'M.15 -.66L.214 -.64L.214 -.2L.15 -.2Z', mirror: 'copy' },
  { role: 'underbody', path: 'M-.5 -.34L-1 -.34L-1 -.3L-.5 -.3Z', mirror: 'copy' },
  { role: 'hull', path: 'M-.64 0C-.6 -.2 -.56 -.4 -.5 -.5L-.1 -.92C.02 -.97 .06 -1 .108 -1L.116 0', mirror: 'join' },
  { role: 'trim', path: 'M-.42 -.52L.012 -.84L.1 -.87L.108 0', mirror: 'join' },
];

const sloop: readonly HullLine[] = [
  { role: 'rig', path: 'M.11 -.94L.52a -.46L.92a -.02', mirror: 'copy' },
  { role: 'trim', path: 'M.51a -.46L.53a 0', mirror: 'copy' },
  mast('.935a', 0.05),
  { role: 'trim', path: 'M.11 -.9L.19 -.86M.112 -.6L.192 -.58L.192 0', mirror: 'copy' },
  { role: 'house', path: 'M.1 -.58L.168 -.5C.18 -.4 .187 -.2 .187 0', mirror: 'join' },
  { role: 'underbody', path: 'M-.2 -.05L-.86 -.05C-.9 -.1 -.96 -.12 -1 -.1L-1 0', mirror: 'join' },
  { role: 'hull', path: 'M-.26 0C-.25 -.3 -.2 -.66 -.06 -.86C.03 -.98 .07 -1 .112 -1L.124 0', mirror: 'join' },
  { role: 'trim', path: 'M.034 0C.034 -.3 .05 -.56 .106 -.62L.11 0', mirror: 'join' },
  { role: 'underbody', path: 'M.03 -.025L-.67 -.025L-.67 0', mirror: 'join' },
];

const ketch: readonly HullLine[] = [
  { role: 'rig', path: 'M.11 -.96L.5a -.44L.965a -.02M.105 -.84L.4a -.3L.655a -.02', mirror: 'copy' },
  { role: 'trim', path: 'M.49a -.44L.51a 0M.4a -.3L.41a 0', mirror: 'copy' },
  mast('.974a', 0.045),
  { role: 'house', path: 'M.07 -.56L.185 -.54C.192 -.5 .195 -.4 .195 0', mirror: 'join' },
  { role: 'glass', path: 'M.148 -.48L.18 -.47L.182 -.06L.148 -.06Z', mirror: 'copy' },
  { role: 'house', path: 'M.07 -.52L.114 -.48L.12 0', mirror: 'join' },
  mast('.667a', 0.035),
  { role: 'trim', path: 'M.1 -.9L.155 -.88M.102 -.56L.156 -.54L.156 0', mirror: 'copy' },
  {
    role: 'hull',
    path: 'M-1 0L-1 -.05C-.9 -.08 -.66 -.16 -.54 -.34C-.4 -.6 -.2 -.9 0 -.98C.03 -1 .06 -1 .1 -1L.112 0',
    mirror: 'join',
  },
  { role: 'trim', path: 'M.03 0C.03 -.26 .05 -.5 .1 -.55L.106 0', mirror: 'join' },
  { role: 'underbody', path: 'M.02 -.02L-.94 -.02L-.94 0', mirror: 'join' },
];

const catamaran: readonly HullLine[] = [
  { role: 'rig', path: 'M.115 -.94L.93a -.01', mirror: 'copy' },
  { role: 'trim', path: 'M.5a -.24L.51a 0', mirror: 'copy' },
  mast('.94a', 0.03),
  { role: 'house', path: 'M.1 -.58L.19 -.46C.21 -.42 .216 -.3 .22 0', mirror: 'join' },
  { role: 'glass', path: 'M.15 -.48L.192 -.4L.2 -.05L.15 -.05Z', mirror: 'copy' },
  { role: 'hull', path: 'M.055 0L.05 -.64L.112 -.64L.118 0', mirror: 'join' },
  { role: 'underbody', path: 'M-.4 -.84L-1 -.82L-1 -.78L-.4 -.76Z', mirror: 'copy' },
  {
    role: 'hull',
    path: 'M-.5 -.8C-.46 -.9 -.3 -.96 0 -.98L.11 -1L.112 -.62L0 -.63C-.3 -.65 -.46 -.7 -.5 -.8Z',
    mirror: 'copy',
  },
];

const displacement: readonly HullLine[] = [
  { role: 'spar', path: 'M.28 0L1a 0' },
  { role: 'house', path: 'M.18 -.68L.276 -.64C.282 -.6 .286 -.5 .286 0', mirror: 'join' },
  { role: 'glass', path: 'M.214 -.56L.258 -.54L.26 -.06L.214 -.06Z', mirror: 'copy' },
  { role: 'house', path: 'M.07 -.72L.19 -.7C.196 -.68 .2 -.6 .2 0', mirror: 'join' },
  { role: 'glass', path: 'M.14 -.6L.178 -.59L.178 -.2L.14 -.2Z', mirror: 'copy' },
  {
    role: 'hull',
    path: 'M-1 0L-1 -.06C-.92 -.3 -.7 -.74 -.3 -.92C0 -1 .06 -1 .096 -1L.104 0',
    mirror: 'join',
  },
  { role: 'trim', path: 'M-.2 0C-.2 -.3 0 -.7 .09 -.8L.096 0', mirror: 'join' },
];

const sportCruiser: readonly HullLine[] = [
  { role: 'spar', path: 'M.25 0L1a 0' },
  { role: 'house', path: 'M.08 -.82L.15 -.76C.18 -.6 .19 -.3 .19 0', mirror: 'join' },
  {
    role: 'house',
    path: 'M.1 -.94L.246 -.78C.254 -.76 .258 -.7 .258 -.66L.258 0L.244 0L.244 -.62C.244 -.66 .24 -.68 .232 -.7L.1 -.86Z',
    mirror: 'copy',
  },
  { role: 'underbody', path: 'M-.2 -.05L-1 -.03L-1 0', mirror: 'join' },
  { role: 'hull', path: 'M-.56 0L-.12 -.9C0 -.96 .06 -1 .1 -1L.112 0', mirror: 'join' },
  { role: 'trim', path: 'M-.48 0L.004 -.84L.09 -.9L.1 0', mirror: 'join' },
];

const openBoat: readonly HullLine[] = [
  { role: 'spar', path: 'M.17 0L1a 0' },
  { role: 'house', path: 'M.06 -.32L.17 -.3C.185 -.26 .192 -.2 .195 0', mirror: 'join' },
  { role: 'glass', path: 'M.19 -.24L.244 -.2L.25 0', mirror: 'join' },
  { role: 'hull', path: 'M-.54 0L-.14 -.86C0 -.94 .05 -1 .09 -1L.1 0', mirror: 'join' },
  { role: 'trim', path: 'M-.46 0L.01 -.78L.08 -.88L.09 0', mirror: 'join' },
  { role: 'house', path: 'M.04 -.1L.15 -.1C.162 -.08 .168 -.04 .17 0', mirror: 'join' },
  { role: 'underbody', path: 'M.04 -.04L-1 -.03L-1 0', mirror: 'join' },
];

/** What is seen of each kind of boat from behind her. */
export const hullSections: Readonly<Record<keyof typeof hullShapes, readonly HullLine[]>> = {
  sloop,
  ketch,
  catamaran,
  'pilothouse-motorboat': pilothouse,
  trawler: displacement,
  'sport-cruiser': sportCruiser,
  'open-boat': openBoat,
  'rigid-inflatable': openBoat,
  'river-cruiser': displacement,
  'steel-workboat': displacement,
};
