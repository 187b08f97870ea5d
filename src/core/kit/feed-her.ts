import { busFuseA } from '../backbone/bus-fuse.ts';
import { indexBoat } from '../boat/boat-index.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { freeId } from '../boat/every-id.ts';
import type { EditCall } from '../boat/history.ts';
import { byCodeUnit, splitDotted } from '../boat/ids.ts';
import type { Circuit, Panel } from '../boat/supply.ts';
import type { Plan } from '../plan-shape.ts';
import { pickFuse } from '../power/pick-fuse.ts';

const unitOf = (target: string): string => (target.includes('.') ? splitDotted(target).kit : target);

type FedPlan = Pick<Plan, 'panels' | 'loads' | 'buses'>;

/** What hangs on a unit draws through its fuse: a drive through that of its pilot computer. */
const drawnThrough = ({ loads }: FedPlan, target: string): { steadyA: number; peakA: number } => {
  const hanging = loads.filter(({ source }) => source.by === 'unit' && unitOf(source.port) === unitOf(target));
  const all = [...loads.filter(({ port }) => port === target), ...hanging];
  return {
    steadyA: all.reduce((sum, { mostA }) => sum + mostA, 0),
    peakA: all.reduce((sum, { mostA, peakA = mostA }) => sum + peakA, 0),
  };
};

/** The fuse of what no circuit names yet, A; undefined where none is made so large. */
const fuseFor = (boat: Boat, plan: FedPlan, target: string): number | undefined => {
  const bus = plan.buses.find(({ id }) => id === target);
  if (bus !== undefined) return busFuseA({ boat }, bus.grade);
  const drawn = drawnThrough(plan, target);
  const statedA = plan.loads.find(({ port }) => port === target)?.fuseA;
  const isStated = statedA !== undefined && statedA >= drawn.steadyA;
  return pickFuse({ ...drawn, ...(isStated ? { statedA } : {}) }).ratingA;
};

const nameOf = (boat: Boat, target: string): string => {
  const found = [...boat.buses, ...boat.kit].find(({ id }) => id === unitOf(target));
  return (found?.name ?? target).slice(0, 120);
};

/** Words by which a panel names the circuit that waits for a unit of some kind. */
const waitingFor: Readonly<Record<string, readonly string[]>> = {
  ais: ['ais', 'radio', 'vhf'],
  display: ['screen', 'screens', 'plotter', 'display', 'displays'],
  'mfhf-radio': ['radio'],
  pilot: ['pilot', 'autopilot'],
  'pilot-computer': ['pilot', 'autopilot'],
  radar: ['radar'],
  sounder: ['sounder', 'instruments'],
  'vhf-radio': ['radio', 'vhf'],
};

const wordsOf = ({ id, name = '' }: Circuit): string[] => `${id} ${name}`.toLowerCase().split(/[^a-z]+/);

/** The circuit of a panel that a unit takes: one kept for its kind that carries it, else a spare one of just its fuse. */
const circuitFor = (
  open: readonly Circuit[],
  spare: ReadonlySet<string>,
  { kind, ratingA }: { readonly kind: string; readonly ratingA: number },
): Circuit | undefined => {
  const words = waitingFor[kind] ?? [];
  const kept = open.find(
    (circuit) => circuit.ratingA >= ratingA && wordsOf(circuit).some((word) => words.includes(word)),
  );
  return kept ?? open.find(({ id, ratingA: ownA }) => spare.has(id) && ownA === ratingA);
};

interface Setting {
  readonly boat: Boat;
  readonly plan: FedPlan;
  /** gives ids that nothing has */
  readonly freshId: (id: string) => string;
}

/** Feeds what wants a circuit of one panel. */
const onPanel = ({ boat, plan, freshId }: Setting, panel: Panel, wanted: readonly string[]): EditCall[] => {
  const { sheetOf } = indexBoat(boat);
  const entry = plan.panels.find((one) => one.panel === panel.id);
  const spare = new Set((entry?.circuits ?? []).flatMap(({ circuit, free }) => (free ? [circuit] : [])));
  const open = panel.circuits.filter(({ feeds }) => feeds.length === 0).sort((a, b) => byCodeUnit(a.id, b.id));
  let left = panel.freeWays ?? Number.POSITIVE_INFINITY;
  return wanted.flatMap((target): EditCall[] => {
    const ratingA = fuseFor(boat, plan, target);
    if (ratingA === undefined) return [];
    const kind = sheetOf.get(unitOf(target))?.kind;
    const own = kind === undefined ? undefined : circuitFor(open, spare, { kind, ratingA });
    if (own !== undefined) {
      open.splice(open.indexOf(own), 1);
      return [{ edit: 'feed-port', params: { port: target, circuit: `${panel.id}.${own.id}` } }];
    }
    if (left <= 0) return [];
    left -= 1;
    const id = freshId(`${unitOf(target)}-circuit`);
    const circuit: Circuit = { id, name: nameOf(boat, target), ratingA, kind: 'breaker', feeds: [target] };
    return [{ edit: 'add-circuit', params: { panel: panel.id, circuit } }];
  });
};

/**
 * The edits that give a circuit to whatever comes aboard and has none, on the panel the plan wants it on: the one kept for
 * its kind, else a spare one of just the fuse it takes, else one more in the panel, as long as places for it are left or nobody has counted them. Where
 * there is no room it stays unfed and the plan says so. Pure.
 */
export const feedHer = (boat: Boat, plan: FedPlan): EditCall[] => {
  const given = new Set<string>();
  const freshId = (id: string): string => {
    let fresh = freeId(boat, id);
    for (let at = 2; given.has(fresh); at += 1) fresh = freeId(boat, `${id}-${at}`);
    given.add(fresh);
    return fresh;
  };
  return plan.panels.flatMap(({ panel: id, room }) => {
    const panel = boat.supply.panels.find((one) => one.id === id);
    return panel === undefined ? [] : onPanel({ boat, plan, freshId }, panel, room.at(-1)?.wanted ?? []);
  });
};
