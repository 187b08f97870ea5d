import { taped } from '../../base.ts';
import { fillerSheet, withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

const receiver = fillerSheet('nameless', 'Old AIS receiver and screen in one', 1);

/** An old receiver tells its screen where ships are, never who they are. */
export const readingsAisNamesMissing: Fault = {
  rule: 'readings/ais-names-missing',
  about: ['ais-screen', 'ais-screen.n2k'],
  plant: (before) => {
    const boat = withOwnBus(before, {
      id: 'ais-bus',
      name: 'AIS bus',
      sheet: {
        ...receiver,
        source: 'manual',
        sourceNote: 'Read aboard in its manual, chapter on messages.',
        ports: receiver.ports.map((port) => ({
          ...port,
          sends: [{ pgn: 129038 }, { pgn: 129039 }],
          hears: [{ pgn: 129038 }, { pgn: 129039 }],
        })),
      },
      kit: [
        { id: 'ais-ear', name: 'old AIS receiver', place: 'panel-locker', tail: taped(0.3) },
        { id: 'ais-screen', name: 'old AIS screen', place: 'panel-locker', tail: taped(0.3) },
      ],
      walk: [{ place: 'panel-locker', tees: ['ais-ear.n2k', 'ais-screen.n2k', 'feed'] }],
    });
    return { ...boat, needs: [...boat.needs, { reading: 'ais-targets', at: 'ais-screen', must: false }] };
  },
};
