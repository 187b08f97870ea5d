import type { CoaxRun } from '../../aerial-shape.ts';
import type { BoatIndex } from '../../boat/boat-index.ts';
import { limitOf } from '../../boat/limit-of.ts';
import { coaxKinds } from '../../facts/coax.ts';
import type { Observation, Rule } from '../rule.ts';
import { limitPart, metres, unitName } from '../rule-words.ts';

const limitOfRun = (index: BoatIndex, { use, verdict }: CoaxRun) =>
  limitOf(index.boat, use === 'kept' ? 'coax-kept-most' : verdict === 'fault' ? 'coax-new-most' : 'coax-new-aim');

const arrivesWords = ({ powerW, soundW, weatheredW, soundDb, weatheredDb }: CoaxRun): string =>
  powerW === undefined || soundW === undefined || weatheredW === undefined
    ? `${soundDb.toFixed(1)} dB with sound joints, ${weatheredDb.toFixed(1)} dB with weathered ones`
    : `of ${powerW} W ${soundW.toFixed(1)} W arrive with sound joints (${soundDb.toFixed(1)} dB), ${weatheredW.toFixed(1)} W with weathered ones (${weatheredDb.toFixed(1)} dB)`;

const cureOf = ({ use, verdict, faultReadsSwr, rangeShare }: CoaxRun): string => {
  if (use === 'new')
    return verdict === 'fault'
      ? 'Settle on a thicker coax, a shorter way, or a place nearer for the radio or the antenna.'
      : 'A thicker coax or a shorter way brings it to the aim; no kind on the list does on this way.';
  const share = `A weak signal keeps about ${Math.round(100 * rangeShare)} % of its range; inside the horizon it hardly shows.`;
  return `${share} Open each joint: where all are dry and bright, say so in the cable. Measure at the radio: an antenna that is a fault reads ${faultReadsSwr.toFixed(1)} there, not 3. Renew it when the mast is down.`;
};

/** Loss from radio to antenna on the real way, tail, break at the mast and every joint counted; kept coax is never a fault by calculation. */
export const coaxLosesTooMuch: Rule = {
  id: 'antennas/coax-loses-too-much',
  level: 'fault',
  title: 'Too little of what a radio sends reaches its antenna.',
  sources: [
    'choice-coax-limits',
    'practice-joints',
    'land-mobile-handbook',
    'plane-earth-law',
    'transmission-line',
    'practice-swr',
  ],
  check: ({ index, plan }) =>
    plan.coax
      .filter(({ verdict }) => verdict !== 'ok')
      .map((run): Observation => {
        const lossDb = run.judgedBy === 'sound' ? run.soundDb : run.weatheredDb;
        const what = run.pieces
          .map(({ kind }) => (kind === undefined ? 'unknown coax' : coaxKinds[kind].name))
          .join(' and ');
        return {
          about: [run.radio.split('.')[0] ?? run.radio, run.antenna],
          apart: [run.radio],
          ...(run.verdict === 'fault' || run.verdict === 'ok' ? {} : { level: run.verdict }),
          says: `From ${unitName(index, run.radio)} to ${unitName(index, run.antenna)} lead up to ${metres(run.lengthM)} of ${what} with ${run.joints} joints: ${arrivesWords(run)}.`,
          measured: { value: lossDb, unit: 'dB' },
          limit: limitPart(limitOfRun(index, run)),
          cure: cureOf(run),
        };
      }),
};
