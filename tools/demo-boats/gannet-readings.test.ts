import { describe, expect, test } from 'vitest';
import { indexBoat } from '../../src/core/boat/boat-index.ts';
import { edits } from '../../src/core/boat/edits/index.ts';
import { typicalSheets } from '../../src/core/facts/sheets/index.ts';
import { joinsOf } from '../../src/core/joins/joins-of.ts';
import { type Arrival, arrivals, arrivedIn, needKey } from '../../src/core/readings/arrivals.ts';
import { refitOf } from '../../src/core/readings/refit.ts';
import { gannet } from './gannet.ts';

const index = indexBoat(gannet());
const joins = joinsOf(index, 1);
const entries = arrivals(
  refitOf(index, () => joins),
  1,
);

const wayOf = (reading: string, at: string, instance?: number): string | undefined =>
  entries
    .find((entry: Arrival) => entry.reading === reading && entry.at === at && entry.instance === instance)
    ?.by.join(' > ');

describe("Gannet's readings", () => {
  test('all 56 arrive', () => {
    expect(entries.filter((entry) => !entry.arrives)).toEqual([]);
    expect(entries).toHaveLength(56);
  });

  test.each([
    ['radar-picture', 'mfd-fly', undefined, 'radar.eth > switch.p3 > switch.p2 > mfd-fly.eth'],
    [
      'sonar-picture',
      'mfd-helm',
      undefined,
      'transducer.echo > sonar.echo > sonar.eth > switch.p4 > switch.p1 > mfd-helm.eth',
    ],
    ['chart-share', 'mfd-fly', undefined, 'mfd-helm.eth > switch.p1 > switch.p2 > mfd-fly.eth'],
    ['position', 'vhf-2', undefined, 'gnss.n2k > conv-fly.n2k > conv-fly.out > vhf-2.in'],
    ['position', 'ais', undefined, 'ais-gnss.rf > ais.gnss-rf'],
    ['route', 'pilot-computer', undefined, 'mfd-helm.n2k > conv-pilot.n2k > conv-pilot.out > pilot-computer.in'],
    ['variation', 'pilot-computer', undefined, 'gnss.n2k > conv-pilot.n2k > conv-pilot.out > pilot-computer.in'],
    [
      'rudder',
      'instr-helm',
      undefined,
      'rudder-ref.signal > pilot-computer.rudder-in > pilot-computer.out > conv-pilot.in > conv-pilot.n2k > instr-helm.n2k',
    ],
    [
      'pilot-state',
      'pilot-head-fly',
      undefined,
      'pilot-computer.head-wire > pilot-head.wire > pilot-head.next > pilot-head-fly.wire',
    ],
    ['engine', 'mfd-fly', 1, 'engine-s.engine-bus > eng-gw-stbd.engine-bus > eng-gw-stbd.n2k > mfd-fly.n2k'],
    ['fuel-level', 'mfd-helm', 1, 'fuel-s.signal > tank-box.in-2 > tank-box.n2k > mfd-helm.n2k'],
    ['water-level', 'mfd-helm', 0, 'water-s.signal > tank-box.in-3 > tank-box.n2k > mfd-helm.n2k'],
    ['ais-targets', 'mfd-helm', undefined, 'ais-whip.rf > ais.vhf-rf > ais.n2k > mfd-helm.n2k'],
    ['dsc-calls', 'mfd-helm', undefined, 'vhf-1-whip.rf > vhf-1.rf > vhf-1.n2k > mfd-helm.n2k'],
  ])('%s reaches %s (instance %s) by %s', (reading, at, instance, way) => {
    expect(wayOf(reading, at, instance)).toBe(way);
  });

  test('the only heading on the bus is that of the new sensor: without it the displays have none', () => {
    const without = indexBoat({ ...gannet(), kit: gannet().kit.filter((unit) => unit.id !== 'heading') });
    const left = joinsOf(without, 1).map((join) => ({
      ...join,
      members: join.members.filter((m) => m.kit !== 'heading'),
    }));
    const lost = arrivals(
      refitOf(without, () => left),
      1,
    ).filter((entry) => !entry.arrives);
    expect(new Set(lost.map((entry) => entry.reading))).toEqual(new Set(['heading']));
    expect(lost).toHaveLength(3);
  });

  test('with the bus dead the flybridge display still has a position and the depth', () => {
    const others = joins.filter((join) => join.id !== 'on-nav');
    const left = arrivals(
      refitOf(index, () => others),
      1,
    ).filter((entry) => entry.arrives && entry.at === 'mfd-fly');
    expect(left.map((entry) => entry.reading)).toEqual(expect.arrayContaining(['position', 'depth', 'radar-picture']));
  });

  test('no unit of the library takes a reading away by coming on the bus', () => {
    const wanted = new Set(entries.map(needKey));
    for (const { id, ports } of typicalSheets) {
      const port = ports.find(({ protocol }) => protocol === 'nmea2000');
      if (port === undefined) continue;
      const unit = { id: 'one-more', name: 'one more', sheet: id, fate: 'comes', place: 'helm-console' } as const;
      const more = edits['join-bus'].apply(edits['add-unit'].apply(gannet(), unit), {
        port: `one-more.${port.id}`,
        bus: 'nav',
      });
      const changed = indexBoat(more);
      const refit = refitOf(changed, (phase) => joinsOf(changed, phase));
      expect(arrivedIn(refit, 1), id).toEqual(wanted);
    }
  });
});
