import type { Spacing } from '../../aerial-shape.ts';
import { limitOf } from '../../boat/limit-of.ts';
import type { Observation, Rule } from '../rule.ts';
import { limitPart, metres, unitName } from '../rule-words.ts';

/** What one set hears of the other, in words. */
const heardWords = ({ isolationDb, isEstimate, coupledDbm }: Spacing): string => {
  if (isolationDb === undefined || coupledDbm === undefined) return '';
  const watts = 10 ** (coupledDbm / 10) / 1000;
  const heard = watts >= 0.1 ? `${watts.toFixed(1)} W` : `${(watts * 1000).toFixed(watts < 0.001 ? 2 : 0)} mW`;
  return ` About ${isolationDb.toFixed(0)} dB${isEstimate === true ? ', an estimate,' : ''} part them: ${heard} of one arrive at the set of the other.`;
};

/** Pairs that are only advice speak once for each antenna, for the nearest; a doubt always speaks. */
const spoken = (spacings: readonly Spacing[]): Spacing[] => {
  const told = new Set<string>();
  return spacings
    .filter(({ what, verdict }) => what !== 'position' && verdict !== 'ok')
    .sort((one, other) => one.distanceM - other.distanceM)
    .filter(({ one, other, verdict }) => {
      if (verdict === 'advice' && (told.has(one) || told.has(other))) return false;
      told.add(one).add(other);
      return true;
    });
};

/** An AIS set beside a voice radio: ten metres by the guideline for ships, three by installation books, graded and never failed. */
export const antennasTooNear: Rule = {
  id: 'antennas/antennas-too-near',
  level: 'doubt',
  title: 'Two antennas stand so near that one deafens the other’s radio.',
  sources: ['imo-sn-227', 'practice-antenna-distance', 'practice-isolation'],
  check: ({ index, plan }) =>
    spoken(plan.spacings).map((pair): Observation => {
      const { one, other, what, distanceM, limitM = 0, verdict, how } = pair;
      const isGuideline = verdict === 'advice' || how === 'stacked';
      const limitId = isGuideline
        ? how === 'stacked'
          ? 'ais-over-radio-antenna'
          : 'ais-to-radio-antenna'
        : 'radio-antennas-apart';
      const apart = how === 'level' ? ' on one level' : '';
      return {
        about: [one, other],
        ...(verdict === 'advice' ? { level: 'advice' } : {}),
        says: `${unitName(index, one)} and ${unitName(index, other)} stand ${metres(distanceM)} apart${apart}; ${isGuideline ? 'the guideline for ships asks for' : 'installation books ask for'} ${limitM} m.${heardWords(pair)}`,
        measured: { value: distanceM, unit: 'm' },
        limit: limitPart(limitOf(index.boat, limitId)),
        cure:
          verdict === 'advice'
            ? 'Live with it where there is no room: while the one sends, the other hears little. Best is one straight above the other by 2 m, or one on the masthead and one on the stern rail.'
            : `Move one of them${what === 'ais' ? ', best straight above or below the other by 2 m or more' : ''}. As they stand a receiver may be hurt when the other radio sends.`,
      };
    }),
};
