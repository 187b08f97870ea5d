import type { Cure } from '../../cure-shape.ts';
import type { Rule } from '../rule.ts';

/** What a person may find between the two. */
const answers = [
  { by: 'switch', says: 'A switch parts them.' },
  { by: 'relay', says: 'A charging relay parts them.' },
  { by: 'diode', says: 'A diode parts them.' },
  { by: 'dcdc', says: 'A converter that charges parts them.' },
  { by: 'nothing', says: 'Nothing parts them.' },
] as const;

const answerCure = (bank: string, says: string, partedBy: (typeof answers)[number]['by']): Cure => ({
  says,
  edits: [{ edit: 'change-bank', params: { bank, partedBy } }],
});

/** A house that can draw on the starting bank empties it by night. */
export const startNotIsolated: Rule = {
  id: 'supply/start-not-isolated',
  level: 'fault',
  title: 'Nothing parts the starting bank from the house.',
  sources: ['practice-separate-feeds'],
  check: ({ index }) => {
    const { banks } = index.boat.supply;
    const house = banks.filter((bank) => bank.for === 'house');
    return banks
      .filter((bank) => bank.for === 'start' && (bank.partedBy === undefined || bank.partedBy === 'nothing'))
      .filter(({ nominalV }) => house.some((bank) => bank.nominalV === nominalV))
      .map(({ id, partedBy }) => ({
        about: [id],
        level: partedBy === undefined ? ('doubt' as const) : ('fault' as const),
        says:
          partedBy === undefined
            ? `Nobody has written what keeps the house from drawing on the starting bank ${id}.`
            : `Nothing keeps the house from drawing on the starting bank ${id}: an evening at anchor may leave you unable to start, and each start pulls the screens down.`,
        cure:
          partedBy === undefined
            ? 'Look what joins the two (switch, relay, diode, converter, nothing) and enter it.'
            : 'Part them by a switch, a charging relay, a diode or a converter that charges. Both battery negatives stay on one point.',
        ...(partedBy === undefined ? { cures: answers.map(({ says, by }) => answerCure(id, says, by)) } : {}),
      }));
  },
};
