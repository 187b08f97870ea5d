import { portOf } from '../boat/boat-index.ts';
import type { Port } from '../boat/sheet.ts';
import type { BondEntry } from '../isolation-shape.ts';
import type { StandingJoin } from '../plan-shape.ts';
import type { Metal } from './metal.ts';

type Member = StandingJoin['members'][number];

/** Where the braid or shield of a cable lies at one unit. */
const landsOn = ({ bodyOf, negativeOf }: Metal, unit: string, where: 'body' | 'negative' | 'nothing' | undefined) =>
  where === 'body' ? bodyOf(unit) : where === 'negative' ? negativeOf(unit) : undefined;

/** The braid of a coax, at the units whose sockets join it to something. */
const braidBonds = (metal: Metal, { id, kind, members }: StandingJoin): BondEntry[] =>
  kind !== 'coax'
    ? []
    : members.flatMap(({ kit }): BondEntry[] => {
        const { braidTo } = metal.earthingOf(kit);
        const to = landsOn(metal, kit, braidTo);
        if (to === undefined) return [];
        const where = braidTo === 'body' ? 'its metal' : 'its minus';
        const says = `the braid of its coax lies on ${where} at ${metal.nameOf(kit)}`;
        return [{ id: `braid:${id}:${kit}`, ends: [`braid:${id}`, to], kind: 'braid', about: [kit], says, sure: true }];
      });

/** A line on which the two units need one zero: not a pair that floats, not a network cable, not radio. */
const sharesZero = (kind: StandingJoin['kind'], { line }: Port): boolean =>
  kind === 'nmea0183'
    ? line === 'single-ended' || line === 'rs232'
    : kind === 'single-wire' || kind === 'analog' || kind === 'engine-can' || kind === 'usb' || kind === 'modbus';

/** What a signal’s zero is at a unit: its body where the sender returns over it, else its minus unless it is isolated. */
const zeroAt = (metal: Metal, { kit, port }: Member): { node: string; sure: boolean } | undefined => {
  const entry = portOf(metal.index, `${kit}.${port}`);
  if (entry === undefined || entry.isolated === true) return undefined;
  if (metal.earthingOf(kit).signalTo === 'body') {
    const node = metal.bodyOf(kit);
    return node === undefined ? undefined : { node, sure: true };
  }
  const node = metal.negativeOf(kit);
  return node === undefined ? undefined : { node, sure: entry.isolated === false };
};

/** The zero of a signal line joins what it is at both ends. Where nobody says whether a port is isolated it is not sure. */
const signalBonds = (metal: Metal, { id, kind, members }: StandingJoin): BondEntry[] => {
  const [first, ...others] = members;
  if (first === undefined) return [];
  return others.flatMap((other): BondEntry[] => {
    const ports = [first, other].flatMap((member) => portOf(metal.index, `${member.kit}.${member.port}`) ?? []);
    if (!ports.some((port) => sharesZero(kind, port))) return [];
    const [one, two] = [zeroAt(metal, first), zeroAt(metal, other)];
    if (one === undefined || two === undefined || one.node === two.node) return [];
    const says = `the line between ${metal.nameOf(first.kit)} and ${metal.nameOf(other.kit)} joins the zero of both`;
    return [
      {
        id: `signal:${id}:${first.kit}:${other.kit}`,
        ends: [one.node, two.node],
        kind: 'signal',
        about: [first.kit, other.kit],
        says,
        sure: one.sure && two.sure,
      },
    ];
  });
};

/** A bus port that is said not to be isolated joins the minus of its unit to that of the bus. */
const busBonds = (metal: Metal, join: StandingJoin): BondEntry[] =>
  join.bus === undefined
    ? []
    : join.members.flatMap(({ kit, port }): BondEntry[] => {
        const own = metal.negativeOf(kit);
        const bus = metal.negativeOfBus(join.bus ?? '');
        if (portOf(metal.index, `${kit}.${port}`)?.isolated !== false || own === undefined || bus === undefined)
          return [];
        if (own === bus) return [];
        const says = `the bus joins its minus to that of ${metal.nameOf(kit)}`;
        return [{ id: `signal:${join.bus}:${kit}`, ends: [bus, own], kind: 'signal', about: [kit], says, sure: true }];
      });

/** What lines join: braids, the zero of signals, and the minus of a bus. */
export const lineBonds = (metal: Metal, joins: readonly StandingJoin[]): BondEntry[] =>
  joins.flatMap((join) => [...braidBonds(metal, join), ...signalBonds(metal, join), ...busBonds(metal, join)]);
