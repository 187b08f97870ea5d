import type { Bank, Circuit } from '../../core/boat/supply.ts';
import { cautions } from '../../core/facts/cautions.ts';
import { fuseFamilies } from '../../core/facts/fuses.ts';
import type { MainEntry } from '../../core/panels-shape.ts';
import type { FeedEntry, Plan } from '../../core/plan-shape.ts';
import { circuitKinds } from '../lists/circuit-kinds.ts';
import { printCount } from '../lists/print-figure.ts';
import { printAmps, printVolts, printWire } from '../lists/print-power.ts';
import type { PowerSymbol } from './power-node.ts';

const chemistryWords: Readonly<Record<Bank['chemistry'], string>> = {
  flooded: 'flooded lead',
  agm: 'AGM',
  gel: 'gel',
  lifepo4: 'lithium iron phosphate',
  other: 'battery',
};

const forWords: Readonly<Record<Bank['for'], string>> = {
  house: 'for the house',
  start: 'for starting',
  both: 'for house and starting',
};

/** "AGM, 12 V, 220 Ah, for the house". */
export const bankWords = ({ chemistry, nominalV, capacityAh, for: what }: Bank): string =>
  `${chemistryWords[chemistry]}, ${nominalV} V, ${capacityAh} Ah, ${forWords[what]}`;

/** The first sentence of a caution: what fits beside a symbol; the whole text stands in the app and in its page. */
export const shortCaution = (id: string): string[] => {
  const text = cautions.find((caution) => caution.id === id)?.text;
  return text === undefined ? [] : [`${text.split('. ')[0] ?? text}.`.replace('..', '.')];
};

/** The symbol and the words of the main protection of a bank or panel; nothing where it is said to be none. */
export const mainWords = ({ kind, family, ratingA }: MainEntry): { symbols: readonly PowerSymbol[]; words: string } => {
  const rating = ratingA === undefined ? '' : `${printAmps(ratingA)} `;
  const made = family === undefined ? '' : ` (${fuseFamilies[family].name})`;
  switch (kind) {
    case 'fuse':
      return { symbols: ['fuse'], words: `${rating}main fuse${made}` };
    case 'breaker':
      return { symbols: ['breaker'], words: `${rating}main breaker${made}` };
    case 'none':
      return { symbols: [], words: 'no main fuse' };
    case 'not-known':
      return { symbols: ['unknown'], words: `${rating}main fuse, not looked up` };
  }
};

/** The symbol and the words of a circuit: "10 A breaker m6". */
export const circuitWords = (
  { id, kind, name }: Circuit,
  ratingA: number,
): { symbols: readonly PowerSymbol[]; words: string } => ({
  symbols: [kind === 'fuse' || kind === 'live-fuse' ? 'fuse' : 'breaker'],
  words: `${printAmps(ratingA)} ${circuitKinds[kind]} ${name === undefined ? id : `${id}, ${name}`}`,
});

/** The fuse that a feed has of its own, beside the panel. */
export const ownFuse = ({ fuseA, fuseBy, fuseSlow }: FeedEntry): string | undefined =>
  fuseBy === 'in-line' && fuseA !== undefined
    ? `${printAmps(fuseA)} ${fuseSlow === true ? 'slow ' : ''}fuse`
    : undefined;

/** Wire and length: "6 mm² (10 AWG), 6.15 m". */
export const runWords = ({
  areaMm2,
  awg,
  lengthM,
  unknown,
}: {
  readonly areaMm2?: number | undefined;
  readonly awg?: string | undefined;
  readonly lengthM?: number | undefined;
  /** said where the area is not known */
  readonly unknown: string;
}): string =>
  [
    areaMm2 === undefined ? unknown : printWire({ areaMm2, awg }),
    ...(lengthM === undefined ? [] : [`${lengthM.toFixed(2)} m`]),
  ].join(', ');

/** The volts at a node with everything drawing; undefined where its source cannot carry all of it. */
export const voltsAtNode = ({ supplies }: Pick<Plan, 'supplies'>, node: string): number | undefined =>
  supplies.flatMap(({ at }) => at).find((entry) => entry.node === node)?.volts;

/** "7.2 A; 11.24 V, needs 10.8 V", or that it is too few. */
export const endFacts = ({ loadA, peakA, atEndV, leastV }: FeedEntry): { says: string; isShort: boolean } => {
  const draws = `draws ${printAmps(loadA)}${peakA === undefined ? '' : `, ${printAmps(peakA)} for moments`}`;
  if (atEndV === undefined) return { says: `${draws}; its volts cannot be worked out`, isShort: true };
  const isShort = leastV !== undefined && atEndV < leastV;
  const needs = leastV === undefined ? '' : `, ${isShort ? 'too few: it ' : ''}needs ${Number(leastV.toFixed(2))} V`;
  return { says: `${draws}; ${printVolts(atEndV)}${needs}`, isShort };
};

/** What lives on the leads of a unit and so on its feed. */
export const onItsLeads = (plan: Plan, { to }: FeedEntry): string[] => {
  const count = plan.loads.filter(
    ({ source }) => (source.by === 'unit' || source.by === 'network') && source.port === to,
  ).length;
  return count === 0 ? [] : [`feeds ${printCount(count, 'more unit')} over its leads`];
};

/** What a backbone carries, and where the fewest volts arrive on it. */
export const busFacts = (plan: Plan, bus: string, nameOf: (unit: string) => string): string[] => {
  const entry = plan.buses.find(({ id }) => id === bus);
  if (entry === undefined) return [];
  const arrives = entry.volts.flatMap(({ port }) => {
    const volts = voltsAtNode(plan, port);
    return volts === undefined ? [] : [{ port, volts }];
  });
  const worst = [...arrives].sort((one, other) => one.volts - other.volts)[0];
  const at =
    worst === undefined ? '' : `, least ${printVolts(worst.volts)} at ${nameOf(worst.port.split('.')[0] ?? '')}`;
  return [`${printCount(entry.devices, 'unit')}${at}`];
};
