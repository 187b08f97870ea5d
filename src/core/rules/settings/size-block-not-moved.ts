import { typedSettings } from '../../facts/typed-settings.ts';
import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

const sizes: ReadonlySet<string> = new Set(['ais-bow', 'ais-stern', 'ais-port', 'ais-starboard']);

/** The size block of an AIS does not fit where its position antenna stands. */
export const sizeBlockNotMoved: Rule = {
  id: 'settings/size-block-not-moved',
  level: 'fault',
  title: 'The size block of the AIS is not that of its antenna.',
  sources: ['itu-m1371'],
  looksAt: 'whole-plan',
  check: ({ index, plan }) => {
    const wrong = plan.typed.filter(({ what, stands }) => sizes.has(what) && stands?.agrees === false);
    const units = [...new Set(wrong.map(({ kit }) => kit))];
    return units.map((unit) => {
      const own = wrong.filter(({ kit }) => kit === unit);
      const words = own.map(
        ({ what, shown, stands }) =>
          `${typedSettings[what].name.replace('AIS size, ', '')} ${stands?.shown.figure} m where it is ${shown?.figure} m`,
      );
      return {
        about: [unit],
        says: `${unitName(index, unit)} sends ${words.join(', ')}: other ships see her shifted from where she is.`,
        cure: 'Move the figures with the antenna: whole metres from the one it reckons from. Who may enter them stands on the settings sheet.',
      };
    });
  },
};
