import { siOf } from '../../fitting/settings/what-stands.ts';
import type { Rule } from '../rule.ts';
import { metres, unitName } from '../rule-words.ts';

const unitOf = (port: string): string => port.split('.')[0] ?? port;

/** The offset of a depth stands in the unit where it belongs, and once more in one behind it. */
export const offsetInTwo: Rule = {
  id: 'settings/offset-in-two',
  level: 'fault',
  title: 'The offset of a depth is set in two units.',
  sources: ['practice-depth-settings'],
  looksAt: 'whole-plan',
  check: ({ index, plan }) => {
    const offsetOf = (unit: string): number | undefined => {
      const found = index.boat.measures?.typed?.find((one) => one.unit === unit && one.what === 'depth-offset');
      return found === undefined ? undefined : siOf(found);
    };
    const owners = plan.settings.filter(({ does }) => does === 'offset');
    const isOwner = new Set(owners.map(({ kit }) => kit));
    return plan.settings
      .filter(({ does, kit }) => does === 'no-offset' && !isOwner.has(kit))
      .flatMap(({ kit, source = kit }) => {
        const here = offsetOf(kit) ?? 0;
        const owner = owners.find((setting) => setting.source === source)?.kit ?? unitOf(source);
        const there = offsetOf(owner);
        if (here === 0 || there === undefined || there === 0) return [];
        return [
          {
            about: [kit, owner],
            says: `${metres(here)} stands in ${unitName(index, kit)} and ${metres(there)} in ${unitName(index, owner)}: each adds its own, and the depth is wrong by ${metres(Math.abs(here))}.`,
            measured: { value: here, unit: 'm' },
            cure: `Set ${unitName(index, kit)} to 0, and prove every screen with a lead line.`,
          },
        ];
      });
  },
};
