import type { SourceKey } from './sources.ts';

/** What a line of a hull drawing stands for: it decides weight and filling. */
export type HullRole = 'hull' | 'underbody' | 'house' | 'glass' | 'trim' | 'spar' | 'rig';

/**
 * One line of a hull pattern. `path` is M, L, C, Z with numbers: across the sheet in shares of the length, up it in shares
 * of the length above water and of the draft below it; a height with the letter a is a share of the air draft.
 * Seen from above the second number is a share of the half beam, negative to port; `mirror` says what happens to starboard:
 * `join` closes the port half over the centreline, `copy` draws it again.
 */
export interface HullLine {
  readonly role: HullRole;
  readonly path: string;
  readonly mirror?: 'join' | 'copy';
}

interface HullShape {
  readonly source: SourceKey;
  /** height of the highest house or arch as a share of the length; lowered where the air draft is less */
  readonly houseTop: number;
  /** drawn in this order, so that a hull covers the foot of a house */
  readonly side: readonly HullLine[];
  readonly top: readonly HullLine[];
}

const source = 'drawn-hull-shapes' satisfies SourceKey;

const pilothouse: HullShape = {
  source,
  houseTop: 0.51,
  side: [
    { role: 'spar', path: 'M.246 .4L.246 1a' },
    { role: 'underbody', path: 'M.034 -.4L.04 -.96L.074 -.96L.088 -.4Z' },
    {
      role: 'underbody',
      path: 'M.27 -.6L.118 -.83M.118 -.66C.124 -.72 .124 -.94 .118 -1C.112 -.94 .112 -.72 .118 -.66Z',
    },
    { role: 'trim', path: 'M.228 .39L.238 .5M.264 .39L.254 .5M.222 .5L.276 .5M.233 .445L.259 .445' },
    { role: 'house', path: 'M.252 .25L.312 .25L.272 .384C.27 .392 .264 .395 .256 .395L.224 .395L.218 .386L.232 .38Z' },
    { role: 'glass', path: 'M.507 .334L.496 .364L.474 .36L.478 .318Z' },
    {
      role: 'house',
      path: 'M.222 .238L.222 .252L.252 .257L.257 .288C.32 .292 .41 .298 .46 .312L.507 .337C.522 .312 .533 .29 .542 .262L.606 .246L.612 .238Z',
    },
    {
      role: 'house',
      path: 'M.275 .08L.272 .238L.618 .238C.628 .238 .632 .234 .635 .228L.672 .166C.74 .163 .81 .158 .875 .148L.9 .1Z',
    },
    { role: 'glass', path: 'M.306 .15L.306 .216L.442 .219L.442 .153Z' },
    { role: 'glass', path: 'M.456 .153L.456 .219L.611 .221C.616 .221 .62 .218 .623 .213L.65 .166Z' },
    {
      role: 'trim',
      path: 'M.69 .1L.7 .222C.8 .222 .91 .226 .99 .234L.999 .17M.77 .1L.777 .222M.85 .1L.856 .224M.925 .1L.93 .228',
    },
    { role: 'trim', path: 'M.012 .1L.012 .168L.262 .172M.1 .1L.1 .169M.19 .1L.19 .171' },
    { role: 'trim', path: 'M.01 .022L-.034 .022L-.034 .013L.01 .013' },
    {
      role: 'hull',
      path: 'M0 .108C.3 .104 .62 .118 1 .172C.982 .118 .955 .056 .925 0C.905 -.3 .83 -.48 .7 -.56C.5 -.67 .28 -.66 .1 -.54L.012 -.42L0 .108Z',
    },
    { role: 'trim', path: 'M.001 .092C.3 .088 .62 .102 .993 .154' },
    { role: 'trim', path: 'M.007 .004C.4 0 .7 .012 .95 .068' },
    { role: 'trim', path: 'M.715 .076C.715 .09 .765 .094 .765 .08C.765 .066 .715 .062 .715 .076Z' },
    { role: 'trim', path: 'M.79 .084C.79 .098 .84 .102 .84 .088C.84 .074 .79 .07 .79 .084Z' },
  ],
  top: [
    { role: 'trim', path: 'M0 -.7L-.034 -.64L-.034 0', mirror: 'join' },
    { role: 'hull', path: 'M0 -.87C.16 -.96 .3 -1 .44 -1C.68 -1 .87 -.66 1 0', mirror: 'join' },
    { role: 'trim', path: 'M.012 -.82C.16 -.9 .3 -.94 .44 -.94C.67 -.94 .85 -.62 .975 0', mirror: 'join' },
    { role: 'trim', path: 'M.03 -.66L.258 -.7L.258 0', mirror: 'join' },
    { role: 'trim', path: 'M.672 -.5C.75 -.47 .83 -.32 .868 0', mirror: 'join' },
    { role: 'house', path: 'M.272 -.79L.6 -.82C.648 -.8 .668 -.42 .672 0', mirror: 'join' },
    { role: 'trim', path: 'M.222 -.74L.45 -.74C.52 -.7 .54 -.36 .542 0', mirror: 'join' },
    { role: 'trim', path: 'M.226 -.88L.27 -.88L.27 0M.226 -.88L.226 0', mirror: 'copy' },
  ],
};

const sloop: HullShape = {
  source,
  houseTop: 0.24,
  side: [
    { role: 'rig', path: 'M.99 .14L.577 .93aM.02 .11L.573 .93a' },
    { role: 'spar', path: 'M.568 .1L.571 .935aL.579 .935aL.582 .1Z' },
    { role: 'spar', path: 'M.568 .238L.19 .228L.19 .22L.568 .226Z' },
    {
      role: 'underbody',
      path: 'M.64 -.15L.583 -.92C.58 -1 .565 -1 .545 -1L.415 -1C.395 -1 .395 -.93 .415 -.92L.44 -.15Z',
    },
    { role: 'underbody', path: 'M.05 .01L.066 -.6C.07 -.67 .1 -.67 .106 -.64L.128 0Z' },
    {
      role: 'trim',
      path: 'M.02 .1L.006 .178L.93 .204L1.004 .214L.994 .14M.15 .1L.148 .182M.29 .1L.288 .186M.43 .1L.428 .19M.7 .1L.7 .198M.83 .1L.83 .201M.93 .1L.93 .204',
    },
    { role: 'house', path: 'M.036 .08L.05 .126C.15 .13 .25 .135 .33 .142L.33 .08Z' },
    { role: 'house', path: 'M.325 .08L.325 .152C.38 .172 .48 .186 .575 .187C.66 .184 .735 .158 .82 .126L.82 .08Z' },
    {
      role: 'glass',
      path: 'M.4 .152C.48 .16 .56 .163 .622 .159C.632 .152 .636 .146 .638 .14C.56 .142 .48 .14 .4 .134Z',
    },
    {
      role: 'hull',
      path: 'M.018 .11C.3 .1 .65 .11 1 .142C.982 .098 .95 .044 .905 0C.86 -.1 .78 -.17 .68 -.215C.5 -.29 .3 -.24 .15 -.06C.1 -.01 .05 .012 0 .032L.018 .11Z',
    },
    { role: 'trim', path: 'M.016 .1C.3 .09 .65 .1 .996 .131' },
  ],
  top: [
    { role: 'hull', path: 'M0 -.64C.14 -.88 .32 -1 .46 -1C.68 -1 .88 -.5 1 0', mirror: 'join' },
    { role: 'trim', path: 'M.012 -.58C.15 -.81 .32 -.93 .46 -.93C.67 -.93 .85 -.46 .978 0', mirror: 'join' },
    { role: 'trim', path: 'M.055 -.34L.312 -.46L.312 0', mirror: 'join' },
    { role: 'house', path: 'M.325 -.58C.45 -.63 .56 -.58 .64 -.49C.74 -.37 .8 -.2 .82 0', mirror: 'join' },
    { role: 'spar', path: 'M.566 0C.566 -.032 .584 -.032 .584 0C.584 .032 .566 .032 .566 0Z' },
  ],
};

const ketch: HullShape = {
  source,
  houseTop: 0.22,
  side: [
    { role: 'rig', path: 'M.998 .134L.586 .965aM.86 .12L.586 .72aM.584 .974aL.192 .667aM.01 .105L.192 .655a' },
    { role: 'spar', path: 'M.58 .08L.582 .974aL.588 .974aL.59 .08Z' },
    { role: 'spar', path: 'M.187 .08L.189 .667aL.195 .667aL.197 .08Z' },
    { role: 'spar', path: 'M.58 .206L.245 .214L.245 .207L.58 .196ZM.187 .206L.03 .2L.03 .194L.187 .198Z' },
    { role: 'underbody', path: 'M.13 -.95L.076 -.94C.066 -.9 .07 -.4 .096 -.1L.13 -.1Z' },
    {
      role: 'trim',
      path: 'M.012 .09L.006 .152L.96 .172L1.002 .178L.996 .13M.12 .09L.12 .154M.24 .09L.24 .157M.46 .09L.46 .162M.66 .09L.66 .166M.78 .09L.78 .168M.88 .09L.88 .17M.96 .09L.96 .172',
    },
    { role: 'house', path: 'M.128 .07L.128 .116L.318 .122L.318 .07Z' },
    { role: 'house', path: 'M.41 .07L.41 .118C.52 .121 .66 .119 .765 .113L.785 .07Z' },
    { role: 'house', path: 'M.314 .07L.317 .19L.388 .195C.397 .195 .402 .191 .404 .185L.414 .14L.414 .07Z' },
    { role: 'glass', path: 'M.327 .15L.328 .182L.389 .186L.399 .15Z' },
    {
      role: 'hull',
      path: 'M0 .106C.3 .083 .62 .085 1 .136C.978 .09 .95 .042 .915 0C.89 -.25 .8 -.55 .69 -.77C.63 -.93 .56 -1 .46 -1L.13 -.97L.112 -.26C.08 -.08 .045 0 .004 .03L0 .106Z',
    },
    { role: 'trim', path: 'M0 .097C.3 .074 .62 .076 .994 .126' },
  ],
  top: [
    { role: 'hull', path: 'M0 -.56C.08 -.84 .24 -1 .44 -1C.7 -1 .9 -.5 1 0', mirror: 'join' },
    { role: 'trim', path: 'M.01 -.52C.09 -.79 .24 -.94 .44 -.94C.69 -.94 .87 -.46 .982 0', mirror: 'join' },
    { role: 'house', path: 'M.128 -.44L.318 -.52L.318 0', mirror: 'join' },
    { role: 'house', path: 'M.412 -.52L.72 -.46C.765 -.4 .785 -.2 .785 0', mirror: 'join' },
    { role: 'house', path: 'M.314 -.56L.398 -.56C.41 -.5 .414 -.2 .414 0', mirror: 'join' },
    { role: 'spar', path: 'M.579 0C.579 -.03 .591 -.03 .591 0C.591 .03 .579 .03 .579 0Z' },
    { role: 'spar', path: 'M.187 0C.187 -.025 .197 -.025 .197 0C.197 .025 .187 .025 .187 0Z' },
  ],
};

const catamaran: HullShape = {
  source,
  houseTop: 0.27,
  side: [
    { role: 'rig', path: 'M.93 .13L.561 .93aM.24 .1L.557 .93a' },
    { role: 'spar', path: 'M.554 .1L.556 .94aL.563 .94aL.566 .1Z' },
    { role: 'spar', path: 'M.554 .262L.2 .256L.2 .248L.554 .25Z' },
    { role: 'underbody', path: 'M.4 -.3L.425 -1L.59 -1L.65 -.3Z' },
    { role: 'underbody', path: 'M.06 0L.066 -.86L.1 -.86L.118 0Z' },
    {
      role: 'house',
      path: 'M.262 .09L.268 .202C.35 .218 .45 .222 .53 .208L.63 .158C.67 .142 .7 .134 .73 .128L.74 .09Z',
    },
    { role: 'glass', path: 'M.295 .152L.298 .19C.38 .203 .46 .205 .522 .193L.596 .154Z' },
    {
      role: 'hull',
      path: 'M0 .024L.02 .05L.075 .11C.3 .118 .7 .126 .985 .136C.994 .09 .992 .04 .98 0C.92 -.4 .76 -.48 .55 -.5C.35 -.5 .14 -.32 .03 0L0 .024Z',
    },
    { role: 'trim', path: 'M.07 .1C.3 .107 .7 .115 .988 .125' },
  ],
  top: [
    {
      role: 'hull',
      path: 'M0 -.98L0 -.62L.72 -.6C.86 -.63 .95 -.72 .99 -.8C.92 -.9 .72 -1 .5 -1C.3 -1 .1 -1 0 -.98Z',
      mirror: 'copy',
    },
    { role: 'hull', path: 'M.08 -.62L.72 -.6L.735 0', mirror: 'join' },
    {
      role: 'trim',
      path: 'M.93 -.76L.93 0M.735 -.3L.93 -.3M.78 -.6L.78 0M.83 -.62L.83 0M.88 -.66L.88 0',
      mirror: 'copy',
    },
    { role: 'house', path: 'M.262 -.54L.5 -.54C.64 -.48 .72 -.22 .73 0', mirror: 'join' },
    { role: 'spar', path: 'M.553 0C.553 -.016 .567 -.016 .567 0C.567 .016 .553 .016 .553 0Z' },
  ],
};

const displacement: HullShape = {
  source,
  houseTop: 0.3,
  side: [
    { role: 'spar', path: 'M.395 .2L.398 1aL.402 1aL.406 .2Z' },
    { role: 'underbody', path: 'M.1 -.9L.05 -.9C.044 -.6 .05 -.3 .066 0L.11 0Z' },
    { role: 'trim', path: 'M.66 .1L.668 .214L.985 .238L.998 .16M.74 .1L.745 .22M.83 .1L.834 .226M.915 .1L.918 .232' },
    { role: 'trim', path: 'M.012 .09L.012 .152L.18 .155M.09 .09L.09 .153' },
    { role: 'house', path: 'M.178 .07L.178 .196L.47 .2L.47 .07Z' },
    { role: 'glass', path: 'M.205 .14L.205 .178L.3 .179L.3 .142ZM.315 .142L.315 .18L.41 .181L.41 .144Z' },
    {
      role: 'house',
      path: 'M.42 .07L.42 .276C.47 .284 .56 .286 .628 .282L.634 .274L.62 .2L.622 .17C.68 .165 .73 .156 .77 .14L.78 .08Z',
    },
    { role: 'glass', path: 'M.45 .212L.45 .258L.53 .26L.53 .214ZM.545 .214L.545 .26L.614 .261L.606 .216Z' },
    {
      role: 'hull',
      path: 'M0 .104C.3 .09 .62 .1 1 .166C.985 .11 .955 .05 .93 0C.905 -.42 .84 -.66 .72 -.78C.55 -.9 .3 -.96 .12 -1L.108 -.42C.08 -.2 .04 -.1 .008 -.04L0 .104Z',
    },
    { role: 'trim', path: 'M.001 .09C.3 .076 .62 .086 .994 .15' },
  ],
  top: [
    { role: 'hull', path: 'M0 -.8C.12 -.94 .28 -1 .44 -1C.7 -1 .9 -.62 1 0', mirror: 'join' },
    { role: 'trim', path: 'M.012 -.74C.13 -.88 .28 -.94 .44 -.94C.69 -.94 .87 -.58 .978 0', mirror: 'join' },
    { role: 'trim', path: 'M.03 -.62L.165 -.68L.165 0', mirror: 'join' },
    { role: 'house', path: 'M.178 -.68L.47 -.72L.47 0', mirror: 'join' },
    { role: 'trim', path: 'M.62 -.5C.7 -.46 .76 -.3 .78 0', mirror: 'join' },
    { role: 'house', path: 'M.42 -.72L.6 -.7C.622 -.6 .634 -.3 .634 0', mirror: 'join' },
  ],
};

const sportCruiser: HullShape = {
  source,
  houseTop: 0.26,
  side: [
    { role: 'spar', path: 'M.262 .2L.262 1a' },
    { role: 'underbody', path: 'M.02 -.2L-.012 -.3L-.02 -.8L.01 -1L.04 -.8L.05 -.2Z' },
    { role: 'house', path: 'M.25 .08L.33 .08L.285 .25C.283 .256 .278 .258 .272 .258L.236 .258L.234 .25Z' },
    { role: 'glass', path: 'M.3 .12L.36 .178L.47 .19L.62 .142Z' },
    { role: 'house', path: 'M.3 .08L.31 .13C.4 .14 .5 .146 .6 .148C.7 .148 .8 .146 .88 .14L.9 .1Z' },
    { role: 'trim', path: 'M.68 .1L.69 .196C.8 .197 .9 .2 .985 .206L.998 .15M.78 .1L.786 .197M.88 .1L.884 .2' },
    {
      role: 'hull',
      path: 'M0 .1C.3 .106 .64 .122 1 .152C.97 .108 .93 .05 .885 0C.84 -.3 .74 -.44 .6 -.5C.4 -.56 .2 -.54 .008 -.48L0 .1Z',
    },
    { role: 'trim', path: 'M.003 .004C.4 .002 .66 .014 .915 .06' },
  ],
  top: [
    { role: 'hull', path: 'M0 -.92C.16 -.98 .28 -1 .4 -1C.66 -1 .87 -.64 1 0', mirror: 'join' },
    { role: 'trim', path: 'M.03 -.74L.42 -.78L.42 0', mirror: 'join' },
    { role: 'glass', path: 'M.3 -.82L.47 -.74C.56 -.66 .61 -.34 .62 0', mirror: 'join' },
    { role: 'trim', path: 'M.236 -.9L.285 -.9L.285 0M.236 -.9L.236 0', mirror: 'copy' },
  ],
};

const openBoat: HullShape = {
  source,
  houseTop: 0.3,
  side: [
    { role: 'spar', path: 'M.1 .2L.1 1a' },
    { role: 'underbody', path: 'M.02 0L-.03 -.1L-.03 -.8L0 -1L.03 -.8L.04 0Z' },
    { role: 'trim', path: 'M.06 .08L.08 .28L.13 .28L.16 .08' },
    { role: 'house', path: 'M-.05 .04L-.06 .13C-.05 .16 0 .17 .02 .16L.03 .04Z' },
    { role: 'glass', path: 'M.43 .19L.46 .25L.49 .245L.5 .19Z' },
    { role: 'house', path: 'M.36 .06L.37 .17L.43 .195L.5 .192L.53 .06Z' },
    {
      role: 'hull',
      path: 'M0 .09C.3 .086 .64 .1 1 .15C.975 .1 .94 .046 .9 0C.86 -.3 .76 -.42 .62 -.48C.4 -.54 .2 -.54 .01 -.5L0 .09Z',
    },
    { role: 'trim', path: 'M.002 .05C.3 .046 .64 .06 .965 .106' },
  ],
  top: [
    { role: 'trim', path: 'M0 -.2L-.06 -.16L-.06 0', mirror: 'join' },
    { role: 'hull', path: 'M0 -.9C.2 -.98 .32 -1 .44 -1C.68 -1 .88 -.7 1 0', mirror: 'join' },
    { role: 'trim', path: 'M.03 -.72C.2 -.78 .32 -.8 .44 -.8C.66 -.8 .82 -.5 .92 0', mirror: 'join' },
    { role: 'house', path: 'M.36 -.32L.5 -.32C.525 -.28 .53 -.12 .53 0', mirror: 'join' },
  ],
};

/** Hull shapes by kind of boat, drawn for this project: a likeness to plan on, never a lines plan. */
export const hullShapes = {
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
} as const satisfies Record<string, HullShape>;
