import type { Boat, Join, Need } from '../boat/boat-schema.ts';
import { isAboard } from '../boat/phase.ts';
import type { Plan } from '../plan-shape.ts';

/**
 * A second, plain way to what a failure takes: one explicit graph of copper with the failed piece taken out, searched from
 * scratch for every question; then the boat that is left is asked what arrives on her. Shares nothing with the room it checks.
 */
export interface PlainFailure {
  readonly fails: string;
  readonly how: string;
}

/** Whether a need is met on a boat. */
export type Asks = (boat: Boat, need: Need) => boolean;

type Laid = { readonly [Part in 'lines' | 'buses' | 'joins']: readonly Plan[Part][number][] };

const byWords = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
type Edge = readonly [a: string, b: string, through: string];

const sheetOf = (boat: Boat, kit: string) => {
  const unit = boat.kit.find(({ id }) => id === kit);
  return boat.sheets.find(({ id }) => id === unit?.sheet);
};

const plugName = (boat: Boat, kit: string, port: string): string =>
  `${kit}.${sheetOf(boat, kit)?.ports.find(({ id }) => id === port)?.onPlug ?? port}`;

/** Everything in reach of a node over edges that are whole. */
const flood = (start: string, edges: readonly Edge[]): Set<string> => {
  const seen = new Set([start]);
  for (const at of seen)
    for (const [a, b] of edges) {
      if (a === at) seen.add(b);
      if (b === at) seen.add(a);
    }
  return seen;
};

const mastPlaces = (boat: Boat, foot: string): Set<string> =>
  flood(
    foot,
    boat.ways.filter(({ kind }) => kind === 'mast').map(({ id, ends }): Edge => [ends[0], ends[1], id]),
  );

/** Units and lines that a set of failures breaks themselves. */
const brokenBy = (boat: Boat, laid: Laid, failures: readonly PlainFailure[]) => {
  const units = new Set<string>();
  const lines = new Set<string>();
  for (const { fails, how } of failures) {
    if (how === 'unit') units.add(fails);
    if (how === 'line') lines.add(fails);
    if (how === 'way') for (const line of laid.lines) if (line.ways.includes(fails)) lines.add(line.id);
    if (how !== 'mast') continue;
    const places = mastPlaces(boat, fails);
    const ways = boat.ways.filter(({ kind, ends }) => kind === 'mast' && places.has(ends[0])).map(({ id }) => id);
    for (const unit of boat.kit) if (unit.place !== fails && places.has(unit.place)) units.add(unit.id);
    for (const line of laid.lines) if (line.ways.some((way) => ways.includes(way))) lines.add(line.id);
  }
  return { units, lines };
};

interface Broken {
  readonly failures: readonly PlainFailure[];
  readonly units: ReadonlySet<string>;
  readonly lines: ReadonlySet<string>;
}

const has = ({ failures }: Broken, how: string, fails: string): boolean =>
  failures.some((one) => one.how === how && one.fails === fails);

/** The copper of one bus: tees in a row, an end at either side, the drops; pieces that failed are left out. */
const busEdges = (boat: Boat, laid: Laid, bus: Laid['buses'][number], broken: Broken): Edge[] => {
  const edges: Edge[] = [];
  const joint = (tee: string, at: number): string => `${tee} at ${at}`;
  const [first, last] = bus.ends.map((place) => `${bus.id}/end@${place}`);
  const names = [first ?? '', first === last ? `${last}#2` : (last ?? '')];
  // a stretch of cable for each step of the walk, side by side tees are screwed together
  const stops: { joint: string; name: string; step: number }[] = [];
  let at = 0;
  for (const [step, { place, tees }] of bus.walk.entries()) {
    const isEnd = step === 0 || step === bus.walk.length - 1;
    if (tees.length === 0 && isEnd) stops.push({ joint: `bare ${step}`, name: `end@${place}`, step });
    for (const tee of tees) {
      stops.push({ joint: joint(tee, at), name: tee, step });
      at += 1;
    }
  }
  const used: string[] = [];
  for (const [n, stop] of stops.entries()) {
    const next = stops[n + 1];
    if (next === undefined) continue;
    let cable: string | undefined;
    if (next.step !== stop.step) {
      const pair = [`${bus.id}/${stop.name}`, `${bus.id}/${next.name}`].sort(byWords);
      const name = `trunk:${pair.join('~')}`;
      used.push(name);
      const times = used.filter((one) => one === name).length;
      cable = times === 1 ? name : `${name}#${times}`;
    }
    const isWhole = cable === undefined || !broken.lines.has(cable);
    if (isWhole) edges.push([stop.joint, next.joint, cable ?? '']);
  }
  const [start, end] = [stops[0], stops.at(-1)];
  if (start !== undefined && !has(broken, 'terminator', names[0] ?? '')) edges.push([start.joint, 'terminator 1', '']);
  if (end !== undefined && !has(broken, 'terminator', names[1] ?? '')) edges.push([end.joint, 'terminator 2', '']);
  for (const { joint: own, name } of stops) {
    if (name === 'feed') edges.push([own, 'feed', '']);
    const [kit = '', port = ''] = name.split('.');
    const plug = plugName(boat, kit, port);
    const drop = laid.lines.find(
      (line) => line.kind === 'drop' && [line.from, line.to].includes(plug) && [line.from, line.to].includes(bus.id),
    );
    if (drop === undefined || !broken.lines.has(drop.id)) edges.push([own, `port ${name}`, '']);
  }
  const outOfLine = (edge: Edge): boolean => {
    for (const kit of broken.units) {
      const ports = (sheetOf(boat, kit)?.inLine ?? []).map((port) => `${kit}.${port}`);
      const places = ports.map((port) => stops.findIndex(({ name }) => name === port));
      if (ports.length < 2 || places.some((place) => place < 0)) continue;
      const [low, high] = [Math.min(...places), Math.max(...places)];
      const side = (node: string): number => {
        const place = stops.findIndex((stop) => stop.joint === node);
        if (node === 'terminator 1') return 0;
        if (node === 'terminator 2') return 2;
        return place < low ? 0 : place > high ? 2 : 1;
      };
      const isTrunk = [edge[0], edge[1]].every((node) => node.includes(' at ') || /^(bare|terminator) /.test(node));
      if (isTrunk && side(edge[0]) !== side(edge[1])) return true;
    }
    return false;
  };
  const isOut = (node: string): boolean => {
    const tee = node.split(' at ')[0] ?? '';
    return node.includes(' at ') && has(broken, 'tee', `${bus.id}/${tee}`);
  };
  return edges.filter((edge) => !isOut(edge[0]) && !isOut(edge[1]) && !outOfLine(edge));
};

/** Power: whether something is fed, asked again from the battery each time. */
const powerOf = (boat: Boat, laid: Laid, broken: Broken, phase: number) => {
  const { banks, panels, dcdc } = boat.supply;
  const circuitsFor = (target: string) =>
    panels.flatMap((panel) =>
      panel.circuits.filter(({ feeds }) => feeds.includes(target)).map(({ id }) => ({ panel: panel.id, circuit: id })),
    );
  const line = (a: string, b: string, kind = 'feed') =>
    laid.lines.find((one) => one.kind === kind && [one.from, one.to].includes(a) && [one.from, one.to].includes(b));
  const isCut = (id: string | undefined): boolean => id !== undefined && broken.lines.has(id);
  const circuitLive = (panel: string, circuit: string, seen: string[]): boolean =>
    !has(broken, 'fuse', `${panel}.${circuit}`) && live(panel, seen);
  const live = (id: string, seen: string[]): boolean => {
    if (seen.includes(id)) return false;
    const on = [...seen, id];
    if (banks.some((bank) => bank.id === id)) return !has(broken, 'bank', id) && !has(broken, 'main', id);
    const panel = panels.find((one) => one.id === id);
    if (panel !== undefined) {
      if (['panel', 'feeder', 'main'].some((how) => has(broken, how, id))) return false;
      const circuits = circuitsFor(id);
      return circuits.length === 0
        ? live(panel.from, on)
        : circuits.some((one) => circuitLive(one.panel, one.circuit, on));
    }
    if (dcdc.some((one) => one.id === id)) {
      if (has(broken, 'converter', id)) return false;
      const circuits = circuitsFor(id);
      return (
        circuits.length === 0 ||
        circuits.some((one) => !isCut(line(one.panel, id)?.id) && circuitLive(one.panel, one.circuit, on))
      );
    }
    return true;
  };
  const shorted = (bus: string): boolean =>
    broken.failures.some(({ fails, how }) => {
      if (how !== 'short') return false;
      const drop = laid.lines.find(({ id }) => id === fails);
      return drop === undefined ? fails.startsWith(`${bus}/`) : [drop.from, drop.to].includes(bus);
    });
  /** whether the feed tee of a bus has power; nobody knows where a bus has no feed at all */
  const busFed = (bus: string): boolean | 'not known' => {
    if (shorted(bus)) return false;
    const circuits = circuitsFor(bus);
    if (circuits.length > 0)
      return circuits.some((one) => !isCut(line(one.panel, bus)?.id) && circuitLive(one.panel, one.circuit, []));
    const lead = laid.lines.find((one) => one.kind === 'feed' && [one.from, one.to].includes(bus));
    return lead === undefined ? 'not known' : !isCut(lead.id) && live(lead.from === bus ? lead.to : lead.from, []);
  };
  const partOf = new Map<string, { component: string; sides: number }>();
  const fedPorts = new Set<string>();
  for (const bus of laid.buses) {
    const edges = busEdges(boat, laid, bus, broken);
    const fed = busFed(bus.id);
    const hasFeed = bus.walk.some(({ tees }) => tees.includes('feed'));
    for (const port of bus.walk.flatMap(({ tees }) => tees)) {
      const reach = flood(`port ${port}`, edges);
      const sides = Number(reach.has('terminator 1')) + Number(reach.has('terminator 2'));
      const isFed = fed === 'not known' ? !hasFeed || reach.has('feed') : fed && (!hasFeed || reach.has('feed'));
      if (!isFed || reach.size === 1) continue;
      fedPorts.add(port);
      if (sides > 0) partOf.set(port, { component: `${bus.id} ${[...reach].sort(byWords).join()}`, sides });
    }
  }
  const standing = boat.joins.filter(({ hold }) => hold === 'fixed');
  const byId = [...standing].sort((a, b) => (a.id < b.id ? -1 : 1));
  const aboard = (kit: string): boolean => {
    const unit = boat.kit.find(({ id }) => id === kit);
    return unit !== undefined && isAboard(unit, phase);
  };
  const busPort = (port: string): string | undefined =>
    standing.find(({ bus, members }) => bus !== undefined && members.some((own) => `${own.kit}.${own.port}` === port))
      ?.bus;
  /** how a unit is fed where nothing fails: by circuits, by bus ports, by a lead; a lead is found round by round */
  const leads = new Map<string, { giver: string; line: string | undefined }>();
  const wants = (kit: string): { dc: string[]; others: string[] } => {
    const sheet = sheetOf(boat, kit);
    const ports = sheet?.ownBattery === true ? [] : (sheet?.power ?? []).map(({ port }) => port);
    const isDc = (port: string): boolean => sheet?.ports.find(({ id }) => id === port)?.protocol === 'dc';
    return { dc: ports.filter(isDc), others: ports.filter((port) => !isDc(port)) };
  };
  const knownFeed = (kit: string): boolean => {
    const { dc, others } = wants(kit);
    if (dc.length > 0) return dc.some((port) => circuitsFor(`${kit}.${port}`).length > 0);
    return others.some((port) => busPort(`${kit}.${port}`) !== undefined) || leads.has(kit);
  };
  const units = boat.kit
    .map(({ id }) => id)
    .filter(aboard)
    .sort();
  for (let grew = true; grew; ) {
    grew = false;
    for (const kit of units) {
      const { dc, others } = wants(kit);
      if (dc.length > 0 || knownFeed(kit)) continue;
      for (const port of others) {
        if (leads.has(kit)) break;
        for (const join of byId) {
          if (leads.has(kit) || join.bus !== undefined) continue;
          if (!join.members.some((own) => own.kit === kit && own.port === port)) continue;
          const giver = join.members
            .filter((own) => own.kit !== kit && aboard(own.kit) && knownFeed(own.kit))
            .sort((a, b) => Number(b.as === 'talk') - Number(a.as === 'talk') || (a.kit < b.kit ? -1 : 1))[0];
          if (giver === undefined) continue;
          const ends = [plugName(boat, kit, port), plugName(boat, giver.kit, giver.port)];
          const own = laid.joins.find(({ id }) => id === join.id)?.lines ?? [];
          const cable = laid.lines.find(
            ({ id, from, to }) => own.includes(id) && ends.includes(from) && ends.includes(to),
          );
          leads.set(kit, { giver: giver.kit, line: cable?.id });
          grew = true;
        }
      }
    }
  }
  const lit = (kit: string): boolean => {
    if (broken.units.has(kit)) return false;
    if (!knownFeed(kit)) return true;
    const { dc, others } = wants(kit);
    if (dc.length > 0)
      return dc.some((port) =>
        circuitsFor(`${kit}.${port}`).some(({ panel, circuit }) => {
          const plug = plugName(boat, kit, port);
          const cable = line(panel, plug) ?? line(panel, `${plug}#${port}`);
          return !isCut(cable?.id) && circuitLive(panel, circuit, []);
        }),
      );
    const onBus = others.map((port) => `${kit}.${port}`).filter((port) => busPort(port) !== undefined);
    if (onBus.length > 0)
      return onBus.some((port) => {
        const bus = busPort(port) ?? '';
        const isLaid = laid.buses.some(({ id, walk }) => id === bus && walk.some(({ tees }) => tees.includes(port)));
        return isLaid ? fedPorts.has(port) : busFed(bus) !== false;
      });
    const lead = leads.get(kit);
    return lead === undefined || (!isCut(lead.line) && lit(lead.giver));
  };
  return { lit, partOf, busFed, units };
};

/** What is left of the joins: buses in the parts they fell into, lines that hold. */
const joinsLeft = (
  boat: Boat,
  laid: Laid,
  broken: Broken,
  { partOf, busFed }: Pick<ReturnType<typeof powerOf>, 'partOf' | 'busFed'>,
  hopeful: boolean,
): Join[] => {
  const parts = new Map<string, Join>();
  const others: Join[] = [];
  for (const join of boat.joins) {
    const { bus } = join;
    if (bus !== undefined) {
      const isLaid = laid.buses.some(({ id }) => id === bus);
      for (const member of join.members) {
        const part = partOf.get(`${member.kit}.${member.port}`);
        if (isLaid && (part === undefined || (part.sides < 2 && !hopeful))) continue;
        if (!isLaid && busFed(bus) === false) continue;
        const id = `${join.id} ${part?.component ?? bus}`;
        const known = parts.get(id) ?? { ...join, id, bus: part?.component ?? bus, members: [] };
        parts.set(id, { ...known, members: [...known.members, member] });
      }
      continue;
    }
    const own = laid.joins.find(({ id }) => id === join.id)?.lines ?? [];
    const cut = laid.lines.filter(({ id }) => own.includes(id) && broken.lines.has(id));
    const isOff = ({ kit, port }: Join['members'][number]): boolean =>
      cut.some(({ from, to }) => [from, to].includes(plugName(boat, kit, port)));
    const talker = join.members.find(({ as }) => as === 'talk');
    const members =
      talker === undefined
        ? cut.length > 0
          ? []
          : join.members
        : join.members.filter((member) => member === talker || !isOff(member));
    others.push({ ...join, members });
  }
  return [...parts.values(), ...others];
};

/** The needs that failures take, as `reading instance at`; `asks` is asked of the boat that is left. */
export const plainLosses = ({
  boat,
  laid,
  failures,
  hopeful,
  asks,
  phase = 1,
}: {
  readonly boat: Boat;
  readonly laid: Laid;
  readonly failures: readonly PlainFailure[];
  readonly hopeful: boolean;
  readonly asks: Asks;
  readonly phase?: number;
}): string[] => {
  const broken: Broken = { failures, ...brokenBy(boat, laid, failures) };
  const power = powerOf(boat, laid, broken, phase);
  const left = new Set(power.units.filter(power.lit));
  const joins = joinsLeft(boat, laid, broken, power, hopeful);
  const rest: Boat = {
    ...boat,
    kit: boat.kit.filter(({ id }) => left.has(id)),
    buses: [...new Set(joins.flatMap(({ bus }) => bus ?? []))].map((id) => ({ id, name: id, protocol: 'nmea2000' })),
    joins: joins.map((join) => ({ ...join, members: join.members.filter(({ kit }) => left.has(kit)) })),
  };
  return boat.needs
    .filter((need) => !left.has(need.at) || !asks(rest, need))
    .map(({ reading, instance, at }) => `${reading} ${instance ?? ''} ${at}`)
    .sort();
};
