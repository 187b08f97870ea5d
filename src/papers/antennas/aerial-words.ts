import type { Aerial, CoaxPiece, CoaxRun, Spacing } from '../../core/aerial-shape.ts';
import { coaxKinds } from '../../core/facts/coax.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { Radar } from '../../core/radar-shape.ts';
import { printCount } from '../lists/print-figure.ts';
import { sectorSpan } from './polar-arc.ts';

/** Names of units and places by id. */
export interface SiteNames {
  readonly kit: ReadonlyMap<string, { readonly name: string }>;
  readonly places: ReadonlyMap<string, { readonly name: string }>;
}

type Fitted = Pick<Plan, 'sites' | 'coax' | 'spacings'>;

/** A length as people read it; another where a paper has other units. */
export type PrintLength = (lengthM: number) => string;
const metres: PrintLength = (lengthM) => `${lengthM.toFixed(2)} m`;

/** Said one after the other, each with its capital and its full stop. */
export const asSentences = (says: readonly string[]): string[] =>
  says.map((words) => `${words[0]?.toUpperCase() ?? ''}${words.slice(1)}.`);
const miles = (distanceNm: number): string => `${distanceNm.toFixed(1)} nm`;
const nameOf = ({ kit }: SiteNames, port: string): string => {
  const id = port.split('.')[0] ?? port;
  return kit.get(id)?.name ?? id;
};

/** The other end of a range, in words. */
export const stationWords: Readonly<Record<string, string>> = {
  'small-boat': 'a small boat',
  yacht: 'a yacht’s masthead',
  ship: 'a ship',
};

const byWords: Readonly<Record<CoaxPiece['by'], string>> = {
  plan: 'as the plan picks it',
  pin: 'as settled',
  part: 'by the data sheet of this part',
  name: 'by its name only, the worst of several prints',
  thickness: 'not read, the worst of its thickness',
};

/** What the coax of a run is, and how that is known. */
export const coaxWords = ({ pieces }: Pick<CoaxRun, 'pieces'>): string =>
  [
    ...new Set(pieces.map(({ kind, by }) => `${kind === undefined ? 'coax' : coaxKinds[kind].name} (${byWords[by]})`)),
  ].join(' and ');

const wattWords = ({ powerW, soundW, weatheredW, soundDb, weatheredDb }: CoaxRun): string =>
  powerW === undefined || soundW === undefined || weatheredW === undefined
    ? `${soundDb.toFixed(1)} dB lost with sound joints, ${weatheredDb.toFixed(1)} dB with weathered ones`
    : `of ${powerW} W ${soundW.toFixed(1)} W arrive with sound joints (${soundDb.toFixed(1)} dB), ${weatheredW.toFixed(1)} W with weathered ones (${weatheredDb.toFixed(1)} dB)`;

const verdictWords: Readonly<Record<CoaxRun['verdict'], string>> = {
  ok: 'within its limit',
  advice: 'above the aim',
  doubt: 'above its limit, to be measured',
  fault: 'too much for a new run',
};

/** One run in a sentence without its full stop: what it is made of, what arrives, what that means. */
export const runWords = (run: CoaxRun, length: PrintLength = metres): string =>
  `${coaxWords(run)}, up to ${length(run.lengthM)} with ${printCount(run.joints, 'joint')}: ${wattWords(run)}; ${verdictWords[run.verdict]}`;

/** Best case by geometry, to each of the other stations. */
export const rangeWords = ({ ranges = [] }: Aerial): string =>
  ranges.length === 0
    ? ''
    : `by geometry at best ${ranges.map(({ to, rangeNm }) => `${miles(rangeNm)} to ${stationWords[to] ?? to}`).join(', ')}`;

const spacingWords = (names: SiteNames, unit: string, spacing: Spacing, length: PrintLength): string => {
  const other = spacing.one === unit ? spacing.other : spacing.one;
  const parted =
    spacing.isolationDb === undefined
      ? ''
      : `, ${spacing.isolationDb.toFixed(0)} dB apart${spacing.isEstimate === true ? ' by estimate' : ''}`;
  const asked =
    spacing.verdict === 'ok' || spacing.limitM === undefined ? '' : `; ${length(spacing.limitM)} are asked for`;
  return `${length(spacing.distanceM)} from ${nameOf(names, other)}${parted}${asked}`;
};

/** How high an antenna stands, how far it reaches at best and what arrives at it; a part without its full stop each. */
export const reachSays = (
  names: SiteNames,
  { sites, coax }: Fitted,
  unit: string,
  length: PrintLength = metres,
): string[] => {
  const aerial = sites.find((site) => site.unit === unit)?.aerial;
  if (aerial === undefined) return [];
  const { topM, horizonNm, sends, inOpen } = aerial;
  const reach = horizonNm === undefined ? '' : `, its horizon ${miles(horizonNm)} off`;
  const open = inOpen === false ? ['it stands under cover'] : [];
  return [
    `its tip is ${length(topM)} over the water${reach}`,
    ...(horizonNm === undefined ? open : [rangeWords(aerial)]),
    ...coax.filter(({ antenna }) => antenna === unit).map((run) => runWords(run, length)),
    ...(sends === undefined
      ? []
      : [`people keep ${length(sends.peopleM)} off while ${nameOf(names, sends.radio)} sends`]),
  ];
};

/** What stands near an antenna: others with what parts them, and what is over its horizon. */
const nearSays = (names: SiteNames, { sites, spacings }: Fitted, unit: string, length: PrintLength): string[] => {
  const sky = sites.find((site) => site.unit === unit)?.aerial?.sky ?? [];
  const over = sky.map(({ by, kind }) => (kind === 'mast' ? 'a mast' : nameOf(names, by)));
  return [
    ...spacings
      .filter(({ one, other }) => one === unit || other === unit)
      .map((spacing) => spacingWords(names, unit, spacing, length)),
    ...(over.length === 0 ? [] : [`over its horizon stand ${[...new Set(over)].join(', ')}`]),
  ];
};

/** What there is to say of one antenna, a part without its full stop each. */
export const antennaSays = (names: SiteNames, plan: Fitted, unit: string, length: PrintLength = metres): string[] => [
  ...reachSays(names, plan, unit, length),
  ...nearSays(names, plan, unit, length),
];

const degrees = (deg: number): string => `${Math.round(deg)}°`;

/** An arc that is as narrow is told by its middle. */
const narrowDeg = 2;

/** What an arc is as people say it: from one bearing to the other, clockwise from ahead. */
export const arcWords = (arc: { fromDeg: number; toDeg: number }): string => {
  const spanDeg = sectorSpan(arc);
  if (spanDeg < narrowDeg) return `about ${Math.round(arc.fromDeg + spanDeg / 2) % 360}°`;
  return `${degrees(arc.fromDeg)} to ${degrees(arc.toDeg)}`;
};

const peopleWords = (names: SiteNames, { peopleM, peopleBy, people }: Radar, length: PrintLength): string => {
  const far = peopleM === undefined ? '' : length(peopleM);
  const asked: Readonly<Record<Radar['peopleBy'], string>> = {
    plate: `its plate wants people ${far} off`,
    typical: `such scanners usually want people ${far} off; read the plate`,
    size: `one of its power wants people ${far} off; read the plate`,
    unknown: 'how far people keep off is on its plate',
  };
  const inBeam = people.filter((person) => person.inBeam).map(({ place }) => names.places.get(place)?.name ?? place);
  const who = inBeam.length === 0 ? 'its beam passes over every head' : `heads in its beam: ${inBeam.join(', ')}`;
  return `${who}; ${asked[peopleBy]}`;
};

/** What stands in the beam of a radar, each with its arc and what to blank. */
const shadowSays = (names: SiteNames, { shadows }: Radar, length: PrintLength): string[] =>
  shadows.map((shadow) => {
    const what =
      shadow.kind === 'mast' ? `mast at ${names.places.get(shadow.by)?.name ?? shadow.by}` : nameOf(names, shadow.by);
    const blank = arcWords({ fromDeg: shadow.blankFromDeg, toDeg: shadow.blankToDeg });
    return `${what}, ${length(shadow.distanceM)} off, shadows ${arcWords(shadow)}; blank ${blank}${shadow.isTotal ? '' : '; the array is wider and sees a little past it'}`;
  });

/** What there is to say of one radar beside its picture, a part without its full stop each. */
export const radarBrief = (
  names: SiteNames,
  { sites }: Pick<Plan, 'sites'>,
  unit: string,
  length: PrintLength = metres,
): string[] => {
  const site = sites.find((entry) => entry.unit === unit);
  const radar = site?.radar;
  if (site === undefined || radar === undefined) return [];
  return [
    `it turns ${length(site.aboveWaterM)} over the water: type that into the set; its horizon is ${miles(radar.horizonNm)} off`,
    `it sees nothing nearer than ${length(radar.blindM)}, where the lower edge of its ${radar.beamDeg}° beam meets the sea`,
    peopleWords(names, radar, length),
    ...(radar.feed === undefined
      ? []
      : [`its feed loses ${radar.feed.dropV.toFixed(2)} V at its peak of ${radar.feed.peakA.toFixed(1)} A`]),
    `a heading line out by 1° draws a ship ${length(radar.degreeAtMileM)} to one side at a mile; set it after the heading sensor`,
  ];
};

/** All there is to say of one radar, what shadows it and what a heel takes included. */
export const radarSays = (
  names: SiteNames,
  plan: Pick<Plan, 'sites'>,
  unit: string,
  length: PrintLength = metres,
): string[] => {
  const radar = plan.sites.find((entry) => entry.unit === unit)?.radar;
  if (radar === undefined) return [];
  const lost = radar.heel?.find(({ lostFromDeg }) => lostFromDeg !== undefined);
  return [
    ...radarBrief(names, plan, unit, length),
    ...shadowSays(names, radar, length),
    ...(lost === undefined
      ? []
      : [
          `heeled ${lost.heelDeg}° the horizon is out of its beam from ${degrees(lost.lostFromDeg ?? 0)} to ${degrees(lost.lostToDeg ?? 0)} on either side, unless its mount levels it`,
        ]),
  ];
};
