import type { BlackoutEntry, VitalEntry } from '../blackouts-shape.ts';
import type { Kit } from '../boat/boat-schema.ts';
import { splitDotted } from '../boat/ids.ts';
import { lastPhase } from '../boat/phase.ts';
import type { Sheet } from '../boat/sheet.ts';
import { typicalSheets } from '../facts/sheets/index.ts';
import { isFree } from '../power/source-side/circuit-entry.ts';
import { unitPrice } from '../prices/price-list.ts';
import { byCost, type Candidate, sumOf } from './candidate.ts';
import type { CureContext } from './cure-context.ts';
import { fitSource } from './fit-source.ts';
import { joinAboard } from './join-aboard.ts';
import { newUnit } from './new-unit.ts';

/** What a single point hangs on, for the makers of candidates. */
export interface ReserveTask {
  readonly context: CureContext;
  readonly vital: VitalEntry;
  /** the failures that take it */
  readonly entries: readonly BlackoutEntry[];
}

/** Screens for which another source is looked for. */
const screensTried = 2;

interface Spare {
  /** `panel.circuit` */
  readonly id: string;
  readonly panel: string;
  readonly place: string;
  readonly ratingA: number;
}

/** Circuits that feed nothing, by panel. */
const sparesOf = ({ index, phase }: CureContext): Spare[] =>
  index.boat.supply.panels.flatMap(({ id: panel, place, circuits }) =>
    circuits
      .filter((circuit) => isFree(index, circuit, { phase, last: lastPhase(index.boat) }))
      .map(({ id, ratingA }) => ({ id: `${panel}.${id}`, panel, place, ratingA })),
  );

/** The lead from a panel, by the metre; nothing where no way leads there. */
const leadCost = ({ router, prices }: CureContext, from: string, to: string): number | undefined => {
  const route = router.between({ kind: 'feed', from, to });
  const perM = prices.perM('feed');
  return route === undefined || perM === undefined ? undefined : Math.round((route.mm * perM) / 1000);
};

const dcPorts = (sheet: Sheet | undefined): NonNullable<Sheet['power']> =>
  (sheet?.power ?? []).filter(({ port }) => sheet?.ports.find(({ id }) => id === port)?.protocol === 'dc');

/** A spare circuit that bears what a port draws, nearest first. */
const sparesFor = (
  context: CureContext,
  ask: { readonly place: string; readonly maxA: number },
): { spare: Spare; cost: number }[] =>
  sparesOf(context)
    .filter(({ ratingA }) => ratingA >= ask.maxA)
    .flatMap((spare) => {
      const cost = leadCost(context, spare.place, ask.place);
      return cost === undefined ? [] : [{ spare, cost }];
    })
    .sort((a, b) => a.cost - b.cost);

const ampsOf = ({ max, unit, atV }: NonNullable<Sheet['power']>[number]): number =>
  unit === 'A' ? max : max / (atV ?? 12);

/** A screen, source or radio that goes dark with the others, on a breaker of its own elsewhere. */
const moveFeeds = ({ context, entries, vital }: ReserveTask): Candidate[] => {
  const { index } = context;
  const dark = new Set(entries.filter(({ how }) => how === 'fuse' || how === 'panel').flatMap((entry) => entry.dark));
  return [...dark].flatMap((kit) => {
    const unit = index.kit.get(kit);
    const [port] = dcPorts(index.sheetOf.get(kit));
    if (unit === undefined || port === undefined || !vital.at.includes(kit)) return [];
    return sparesFor(context, { place: unit.place, maxA: ampsOf(port) })
      .slice(0, 2)
      .map(({ spare, cost }): Candidate => {
        const { kit: panel, part } = splitDotted(spare.id);
        return {
          says: `Feed ${unit.name.split(',')[0]} from the free circuit ${part} of panel ${panel}.`,
          edits: [{ edit: 'feed-port', params: { port: `${kit}.${port.port}`, circuit: spare.id } }],
          cost,
        };
      });
  });
};

/** A candidate that buys a unit with a supply of its own is nothing without a circuit for it. */
const withFeed = (context: CureContext, candidate: Candidate): Candidate[] => {
  const [first] = candidate.edits;
  if (first === undefined || first.edit !== 'add-unit') return [candidate];
  // reason: the parameters of add-unit are a unit
  const unit = first.params as Kit;
  const sheet = typicalSheets.find(({ id }) => id === unit.sheet);
  const [port] = dcPorts(sheet);
  if (port === undefined || sheet?.ownBattery === true) return [candidate];
  const [found] = sparesFor(context, { place: unit.place, maxA: ampsOf(port) });
  if (found === undefined) return [];
  const { kit: panel, part } = splitDotted(found.spare.id);
  return [
    {
      says: `${candidate.says} Feed it from the free circuit ${part} of panel ${panel}.`,
      edits: [
        ...candidate.edits,
        { edit: 'feed-port', params: { port: `${unit.id}.${port.port}`, circuit: found.spare.id } },
      ],
      cost: sumOf([candidate.cost, found.cost]),
    },
  ];
};

/** A radio that hangs on nothing aboard. */
const handheld = (context: CureContext, vital: VitalEntry): Candidate[] => {
  const sheet = typicalSheets.find(({ kind, ownBattery }) => kind === 'vhf-radio' && ownBattery === true);
  const place = context.index.kit.get(vital.at[0] ?? '')?.place;
  if (sheet === undefined || place === undefined) return [];
  const unit = { ...newUnit(context, sheet, place), name: 'handheld radio' };
  return [
    {
      says: `Keep a handheld radio at ${context.index.places.get(place)?.name ?? place}: ${sheet.name}.`,
      edits: [{ edit: 'add-unit', params: unit }],
      cost: unitPrice(context.prices, sheet),
    },
  ];
};

/** Another source, or another wire to one that is aboard, for the screens that have the reading now. */
const otherWays = ({ context, vital: { of, at } }: ReserveTask): Candidate[] => {
  if (of === 'radio') return [];
  return at.slice(0, screensTried).flatMap((screen) => {
    const wish = { reading: of, instance: undefined, at: screen };
    const sources = fitSource(context, wish).flatMap((candidate) => withFeed(context, candidate));
    return [...joinAboard(context, wish), ...sources];
  });
};

/** What may keep a vital reading through some of the failures that take it, cheapest first, not tried yet. */
export const reserveCandidates = (task: ReserveTask): Candidate[] => {
  const own = task.vital.of === 'radio' ? handheld(task.context, task.vital) : otherWays(task);
  const all = [...moveFeeds(task), ...own].sort(byCost);
  return all.filter((one, at) => one.says !== all[at - 1]?.says);
};
