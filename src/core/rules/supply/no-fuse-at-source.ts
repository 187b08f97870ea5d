import type { BoatIndex } from '../../boat/boat-index.ts';
import type { BankEntry } from '../../panels-shape.ts';
import type { Observation, Rule } from '../rule.ts';
import { aFew, someNames } from './supply-words.ts';

/** Whether a bank has a main whose rating alone is not known: then it is fused, only nobody knows how. */
const isFused = ({ main }: BankEntry): boolean => main.kind === 'fuse' || main.kind === 'breaker';

const observed = (index: BoatIndex, bank: BankEntry, panels: readonly string[]): Observation => {
  const isSaid = bank.main.kind === 'none' || panels.some((panel) => index.panels.get(panel)?.main?.kind === 'none');
  const wire = `the wire from the bank ${bank.bank} to ${someNames(panels)}`;
  return {
    about: [bank.bank, ...aFew(panels)],
    level: isSaid ? 'danger' : 'doubt',
    says: isSaid
      ? `Nothing protects ${wire}. A short there has the whole bank behind it and sets the boat on fire.`
      : `Nobody has written what protects ${wire}. If nothing does, a short there has the whole bank behind it.`,
    cure: isSaid
      ? 'Fit a main fuse on the positive, at the battery. Take the negative off first; use insulated tools.'
      : 'Look at the battery and enter its main fuse: kind, rating, distance. If there is none, fit one.',
  };
};

/** Every positive has its fuse where it starts; cranking cables are let off. */
export const noFuseAtSource: Rule = {
  id: 'supply/no-fuse-at-source',
  level: 'danger',
  title: 'A wire from a battery has no fuse at its source.',
  sources: ['cfr-33-183-455', 'choice-fuse-place'],
  check: ({ index, plan }) =>
    plan.banks
      .filter((bank) => !isFused(bank))
      .flatMap((bank) => {
        const open = plan.panels
          .filter(({ from, guardA }) => from === bank.bank && guardA === undefined)
          .map(({ panel }) => panel);
        return open.length === 0 ? [] : [observed(index, bank, open)];
      }),
};
