import type { Join } from '../../src/core/boat/boat-schema.ts';

type Member = Join['members'][number];
type Kind = Join['kind'];

const member = (dotted: string, as: Member['as']): Member => {
  const [kit = '', port = ''] = dotted.split('.');
  return { kit, port, as };
};

const fixed = (id: string, kind: Kind, members: Member[]): Join => ({ id, kind, members, hold: 'fixed' });

/** One talker and those who listen to it. */
export const lead = (id: string, kind: Kind, talker: string, ...listeners: string[]): Join =>
  fixed(id, kind, [member(talker, 'talk'), ...listeners.map((listener) => member(listener, 'listen'))]);

/** One Ethernet cable. */
export const link = (id: string, one: string, other: string): Join =>
  fixed(id, 'ethernet', [member(one, 'both'), member(other, 'both')]);

/** Units on one bus, each by its port `n2k`, or by the port named with it. */
export const onBus = (bus: string, units: readonly string[]): Join => ({
  id: `on-${bus}`,
  kind: 'nmea2000',
  bus,
  members: units.map((unit) => member(unit.includes('.') ? unit : `${unit}.n2k`, 'both')),
  hold: 'fixed',
});
