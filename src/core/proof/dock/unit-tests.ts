import { byCodeUnit, splitDotted } from '../../boat/ids.ts';
import { dockFigures } from '../../facts/dock-figures.ts';
import type { TestEntry } from '../../tests-shape.ts';
import { type DockInput, holderOf, placeOf } from './dock-input.ts';

/** Volts at the end of every feed to a unit or a converter. Less than nothing: red and black are swapped. */
export const feedTests = ({ index, plan }: DockInput): TestEntry[] =>
  plan.feeds.flatMap(({ line, to, atEndV, leastV, panel }): TestEntry[] => {
    if (index.buses.has(to)) return [];
    const mostV = plan.loads.find(({ port }) => port === to)?.maxV;
    return [
      {
        id: `dock/feed-volts:${line}`,
        group: 'feed',
        test: 'feed-volts',
        kind: 'number',
        unit: 'V',
        about: [line, holderOf(to), panel],
        ...placeOf(index, to),
        power: 'on',
        ...(atEndV === undefined ? {} : { right: { least: atEndV, ...(mostV === undefined ? {} : { most: mostV }) } }),
        ...(leastV === undefined && mostV === undefined
          ? {}
          : {
              passes: {
                ...(leastV === undefined ? {} : { least: leastV }),
                ...(mostV === undefined ? {} : { most: mostV }),
              },
            }),
        source: 'practice-trial-order',
      },
    ];
  });

/** Every 0183 line and single wire: its level at the listener while the talker is idle where it is a pair, and that it is heard. */
export const pairTests = ({ index, plan }: DockInput): TestEntry[] =>
  plan.pairs.flatMap(({ line, kind, talker, listener, wires }): TestEntry[] => {
    const pairedTo = (role: string): boolean => wires.some(({ from, to }) => from.role === role && to?.role === role);
    const isPair = kind === 'nmea0183' && pairedTo('A') && pairedTo('B');
    const rest: Pick<TestEntry, 'about' | 'group' | 'place' | 'power'> = {
      group: 'pair',
      about: [line, splitDotted(talker.port).kit, splitDotted(listener.port).kit],
      ...placeOf(index, listener.port),
      power: 'on',
    };
    const way = `${talker.port}~${listener.port}`;
    const idle = `dock/pair-idle:${way}`;
    return [
      ...(isPair
        ? [
            {
              ...rest,
              id: idle,
              test: 'pair-idle' as const,
              kind: 'number' as const,
              unit: 'V' as const,
              right: { most: dockFigures.pairIdleMostV.value },
              source: dockFigures.pairIdleMostV.source,
            },
          ]
        : []),
      {
        ...rest,
        id: `dock/pair-heard:${way}`,
        test: 'pair-heard',
        kind: 'yes-no',
        source: 'practice-trial-order',
        ...(isPair ? { after: [idle] } : {}),
      },
    ];
  });

/** Every reading that arrives, at each screen it is needed at: looked for, and ticked by a person. */
export const shownTests = ({ index, plan }: DockInput): TestEntry[] =>
  plan.readings
    .filter(({ arrives }) => arrives)
    .map(({ reading, instance, at }): TestEntry => {
      const numbered = instance === undefined ? {} : { instance };
      return {
        id: `dock/shown:${reading}${instance === undefined ? '' : `.${instance}`}@${at}`,
        group: 'reading',
        test: 'shown',
        kind: 'yes-no',
        about: [at],
        ...placeOf(index, at),
        reading,
        ...numbered,
        power: 'on',
        source: 'practice-trial-order',
      };
    })
    .sort((one, other) => byCodeUnit(one.about[0] ?? '', other.about[0] ?? '') || byCodeUnit(one.id, other.id));
