import type { LightingEntry } from '../../lighting-shape.ts';
import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

type Screen = LightingEntry['screens'][number];

/** Who falls silent with a screen: its group, or itself alone. */
const silentWith = ({ kit, group, quietens }: Screen): string => (quietens === true ? (group ?? kit) : kit);

/** An alarm silenced on one screen goes on at the next, and the hand that looks for it leaves the helm. */
export const alarmNotQuietenedTogether: Rule = {
  id: 'screens/alarm-not-quietened-together',
  level: 'advice',
  title: 'An alarm silenced on one screen goes on at another beside it.',
  sources: ['practice-lighting'],
  looksAt: 'whole-plan',
  check: ({ index, plan }) =>
    plan.lighting.flatMap(({ place, screens }) => {
      const known = screens.filter(({ quietens }) => quietens !== undefined);
      const [one] = known;
      const other = known.find((screen) => one !== undefined && silentWith(screen) !== silentWith(one));
      if (one === undefined || other === undefined) return [];
      return [
        {
          about: [one.kit, other.kit],
          says: `At ${index.places.get(place)?.name ?? place} an alarm silenced on ${unitName(index, one.kit)} goes on at ${unitName(index, other.kit)}.`,
          cure: 'Set one of them not to sound alarms that the other sounds too, or take screens that fall silent together.',
        },
      ];
    }),
};
