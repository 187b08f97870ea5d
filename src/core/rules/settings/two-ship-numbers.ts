import { isAboard, lastPhase } from '../../boat/phase.ts';
import { ownSets } from '../../fitting/settings/own-sets.ts';
import { masked } from '../../walk-round/masked.ts';
import type { Rule } from '../rule.ts';

const digitsOf = (value: string): string | undefined => /\d{9}/.exec(value.replace(/[\s.-]/g, ''))?.[0];

/** The ship's own sets do not all have one number, or not the one of her papers. */
export const twoShipNumbers: Rule = {
  id: 'settings/two-ship-numbers',
  level: 'fault',
  title: 'Her own sets have two numbers.',
  sources: ['uscg-mmsi'],
  looksAt: 'whole-plan',
  check: ({ index }) => {
    const { boat } = index;
    const last = lastPhase(boat);
    const noted = ownSets(index)
      .filter(({ unit }) => isAboard(unit, last))
      .flatMap(({ unit }) => {
        const digits = digitsOf(unit.aboard?.settings?.find(({ name }) => name === 'MMSI')?.value ?? '');
        return digits === undefined ? [] : [{ unit, digits }];
      });
    const number = boat.papers?.number?.digits;
    const [first] = noted;
    const right = number ?? first?.digits;
    const others = noted.filter(({ digits }) => digits !== right);
    if (right === undefined || others.length === 0) return [];
    const words = others.map(({ unit, digits }) => `${unit.name} has ${masked(digits)}`);
    const by = number === undefined ? first?.unit.name : 'her papers';
    return [
      {
        about: (number === undefined ? noted : others).map(({ unit }) => unit.id),
        says: `${words.join(', ')}, ${by} ${masked(right)}: one vessel has one number in all her own sets, and who searches for her looks for two.`,
        cure: 'Find out which is hers; most sets take a number once, so the other goes to its maker or a dealer.',
      },
    ];
  },
};
