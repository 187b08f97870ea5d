import type { LightingEntry } from '../../lighting-shape.ts';
import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

type Screen = LightingEntry['screens'][number];

/** What a screen dims with: itself alone for a knob, its group, or undefined where nobody has said. */
const dimmedWith = ({ kit, dims, group }: Screen): string | undefined => (dims === 'own-knob' ? kit : group);

/** At night every screen must be dark enough; one that is left bright takes the sight of whoever steers. */
export const dimApart: Rule = {
  id: 'screens/dim-apart',
  level: 'advice',
  title: 'Screens at one place do not dim together.',
  sources: ['practice-lighting'],
  looksAt: 'whole-plan',
  check: ({ index, plan }) =>
    plan.lighting.flatMap(({ place, screens }) => {
      const known = screens.filter((screen) => dimmedWith(screen) !== undefined);
      const [one] = known;
      const other = known.find((screen) => one !== undefined && dimmedWith(screen) !== dimmedWith(one));
      if (one === undefined || other === undefined) return [];
      const knob = (screen: Screen): string =>
        `${unitName(index, screen.kit)} ${screen.dims === 'own-knob' ? 'by a knob of its own' : 'with the others of its maker'}`;
      return [
        {
          about: [one.kit, other.kit],
          says: `At ${index.places.get(place)?.name ?? place} the screens do not dim together: ${knob(one)}, ${knob(other)}. At night one that is left bright takes the sight of whoever steers.`,
          cure: 'Take screens that understand the same dimming, or put the knob of each where a hand finds it in the dark and say so on the card for the night.',
        },
      ];
    }),
};
