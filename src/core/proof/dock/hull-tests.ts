import { byCodeUnit } from '../../boat/ids.ts';
import { hullVoltsSource as source } from '../../facts/dock-figures.ts';
import type { TestEntry } from '../../tests-shape.ts';
import type { DockInput } from './dock-input.ts';

const anode = (when: string, like?: string): TestEntry => ({
  id: `dock/anode:${when}`,
  group: 'hull',
  test: 'anode',
  kind: 'number',
  unit: 'V',
  about: [],
  what: when,
  power: when === 'on' ? 'on' : 'off',
  ...(like === undefined ? {} : { like: `dock/anode:${like}` }),
  source,
});

/** Volts from plus and from minus to the hull in one state; each is held beside what it was with all off. */
const toHull = (what: string, about: readonly string[]): TestEntry[] =>
  (['plus-to-hull', 'minus-to-hull'] as const).map((test) => ({
    id: `dock/${test}:${what}`,
    group: 'hull',
    test,
    kind: 'number',
    unit: 'V',
    about: [...about],
    what,
    power: what === 'off' ? 'off' : 'on',
    ...(what === 'off' ? {} : { like: `dock/${test}:off`, after: [`dock/${test}:off`] }),
    source,
  }));

/**
 * On a metal hull: what an anode shows before the work, after it and with everything on; plus and minus against the hull with
 * all off, as each panel comes on after the others, and with everything on.
 */
export const hullTests = ({ plan }: DockInput): TestEntry[] => {
  if (plan.isolation.hull !== 'metal') return [];
  const panels = plan.panels.map(({ panel }) => panel).sort(byCodeUnit);
  return [
    anode('before'),
    ...toHull('off', []),
    ...panels.flatMap((panel) => toHull(panel, [panel])),
    ...toHull('on', []),
    anode('after', 'before'),
    anode('on', 'after'),
  ];
};
