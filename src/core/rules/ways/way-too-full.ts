import type { BoatIndex } from '../../boat/boat-index.ts';
import { conduitFill, fillVerdict } from '../../facts/cable-work.ts';
import type { SourceKey } from '../../facts/sources.ts';
import type { Level, WayEntry } from '../../plan-shape.ts';
import type { Rule } from '../rule.ts';
import { sourceWords } from '../rule-words.ts';

interface Judged {
  readonly level: Level;
  readonly limitPct: number;
  readonly source: SourceKey;
  readonly says: string;
  readonly cure: string;
}

/** Fill that is refused, doubtful, or only unwise; cables that are all in already are never refused. */
const judged = (entry: WayEntry): Judged | undefined => {
  const { fillPct, lines, fitsAtMm } = entry;
  const wider = fitsAtMm === undefined ? '' : ` A bore of ${fitsAtMm} mm would take all of it.`;
  if (fillPct > fillVerdict.refuseAbovePct && lines.length > 0) {
    return {
      level: 'fault',
      limitPct: fillVerdict.refuseAbovePct,
      source: fillVerdict.source,
      says: 'That does not go in.',
      cure: `Lead a cable another way, take out what is dead, or fit a wider pipe.${wider}`,
    };
  }
  if (fillPct > fillVerdict.doubtAbovePct) {
    return {
      level: 'doubt',
      limitPct: fillVerdict.doubtAbovePct,
      source: fillVerdict.source,
      says: pullWords(entry),
      cure:
        lines.length > 0
          ? `Pull a messenger line first, draw all cables together, and reckon with hours for it.${wider}`
          : 'Leave it as it is, and draw nothing more into it.',
    };
  }
  return advised(entry);
};

const pullWords = ({ lines, fillPct, sharePct }: WayEntry): string => {
  if (lines.length === 0) return 'Nothing new is led through it.';
  return fillPct > sharePct ? 'It will be a long, hard pull.' : 'It will be a tight fit.';
};

const advised = ({ lines, reasons }: WayEntry): Judged | undefined => {
  if (lines.length === 0) return undefined;
  if (reasons.includes('two-cables')) {
    return {
      level: 'advice',
      limitPct: conduitFill.twoCablesPct,
      source: conduitFill.source,
      says: 'Two cables side by side need more room than one or three.',
      cure: 'Draw both at once, with lubricant, or take the next wider pipe.',
    };
  }
  if (!reasons.includes('jam')) return undefined;
  return {
    level: 'advice',
    limitPct: conduitFill.morePct,
    source: conduitFill.source,
    says: 'Three cables of one size may roll into a row there and jam.',
    cure: 'Tie the three together before they are drawn, or take another size of pipe.',
  };
};

const endWords = (index: BoatIndex, id: string): string =>
  (index.ways.get(id)?.ends ?? []).map((end) => index.places.get(end)?.name ?? end).join(' to ');

/** What a way is to hold, in words: cables that stay, new ones, or both. */
const held = ({ kept, lines }: WayEntry): string =>
  [
    ...(kept.length === 0 ? [] : [kept.length === 1 ? '1 cable that stays' : `${kept.length} cables that stay`]),
    ...(lines.length === 0 ? [] : [lines.length === 1 ? '1 new cable' : `${lines.length} new cables`]),
  ].join(' and ');

/** Cables that stay and cables that come, in one pipe: above its fill the last of them does not go in. */
export const wayTooFull: Rule = {
  id: 'ways/way-too-full',
  level: 'fault',
  title: 'A pipe is too full for the cables led through it.',
  sources: ['choice-fill', 'nec-fill', 'choice-cable-sizes', 'osr-coax-lengths'],
  check: ({ index, plan }) =>
    plan.ways.flatMap((entry) => {
      const found = judged(entry);
      if (found === undefined) return [];
      const { level, limitPct, source, says, cure } = found;
      const guess = index.ways.get(entry.id)?.bore?.how === 'guessed' ? ' (a guess)' : '';
      return [
        {
          about: [entry.id],
          level,
          says: `The way from ${endWords(index, entry.id)}, ${entry.boreMm} mm wide${guess}, is to hold ${held(entry)}: ${Math.round(entry.fillPct)} % of its bore. ${says}`,
          measured: { value: Math.round(entry.fillPct * 10) / 10, unit: '%' },
          limit: { value: limitPct, unit: '%', source: sourceWords(source) },
          cure,
        },
      ];
    }),
};
