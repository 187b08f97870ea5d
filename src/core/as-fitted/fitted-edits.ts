import type { Boat } from '../boat/boat-schema.ts';
import type { Fitted } from '../boat/fitted.ts';
import type { EditCall } from '../boat/history.ts';
import type { LineEntry, Plan } from '../plan-shape.ts';
import { printLength } from '../units/print-length.ts';

/** What was found otherwise than planned, in figures and ids. */
export type FoundOtherwise =
  | { readonly what: 'place'; readonly unit: string; readonly place: string }
  /** the whole cable of a line, end to end */
  | { readonly what: 'length'; readonly line: string; readonly lengthM: number }
  | { readonly what: 'route'; readonly line: string; readonly ways: readonly string[] }
  | { readonly what: 'wire'; readonly line: string; readonly areaMm2: number }
  | { readonly what: 'fuse'; readonly circuit: string; readonly ratingA: number }
  /** what no plan knows of, in words */
  | { readonly what: 'other'; readonly about: string; readonly is: string };

/** Who found it, and when. */
export type FoundBy = Pick<Fitted, 'on' | 'by' | 'note'>;

/** How a difference is said, and the edits by which the boat file follows it. */
interface Said extends Pick<Fitted, 'about' | 'was' | 'is'> {
  readonly edits: readonly EditCall[];
}

const nameOf = (things: readonly { readonly id: string; readonly name: string }[], id: string): string =>
  things.find((thing) => thing.id === id)?.name ?? id;

const metres = (valueM: number): string => printLength({ valueM, as: 'metres' });

const lineIn = ({ lines }: Pick<Plan, 'lines'>, id: string): LineEntry | undefined =>
  lines.find((line) => line.id === id);

const routeWords = ({ places, ways }: Boat, ids: readonly string[]): string =>
  ids
    .map((id) => {
      const [a = '', b = ''] = ways.find((way) => way.id === id)?.ends ?? [];
      return `${nameOf(places, a)} to ${nameOf(places, b)}`;
    })
    .join(', ') || 'straight';

const wasFuse = ({ supply }: Boat, { feeds }: Pick<Plan, 'feeds'>, named: string): string | undefined => {
  const [panel, circuit] = named.split('.');
  const planned = feeds.find((feed) => feed.panel === panel && feed.circuit === circuit)?.fuseA;
  const entered = supply.panels.find(({ id }) => id === panel)?.circuits.find(({ id }) => id === circuit)?.ratingA;
  const ratingA = planned ?? entered;
  return ratingA === undefined ? undefined : `${ratingA} A`;
};

const wasWire = ({ feeds }: Pick<Plan, 'feeds'>, line: string): string | undefined => {
  const areaMm2 =
    feeds.find((feed) => feed.line === line)?.areaMm2 ??
    feeds.flatMap(({ leads = [] }) => leads).find((lead) => lead.line === line)?.areaMm2;
  return areaMm2 === undefined ? undefined : `${areaMm2} mm²`;
};

const optionally = (was: string | undefined): Pick<Fitted, 'was'> => (was === undefined ? {} : { was });

const saidOf = (boat: Boat, plan: Pick<Plan, 'lines' | 'feeds'>, found: FoundOtherwise): Said => {
  const state = 'fitted';
  switch (found.what) {
    case 'place': {
      const was = boat.kit.find(({ id }) => id === found.unit)?.place;
      return {
        about: found.unit,
        ...optionally(was === undefined ? undefined : nameOf(boat.places, was)),
        is: nameOf(boat.places, found.place),
        edits: [{ edit: 'move-unit', params: { unit: found.unit, place: found.place } }],
      };
    }
    case 'length': {
      const was = lineIn(plan, found.line)?.lengthM;
      const pieces = [{ mm: Math.round(found.lengthM * 1000) }];
      return {
        about: found.line,
        ...optionally(was === undefined ? undefined : metres(was)),
        is: metres(found.lengthM),
        edits: [{ edit: 'pin-pieces', params: { line: found.line, pieces, state } }],
      };
    }
    case 'route': {
      const was = lineIn(plan, found.line)?.ways;
      return {
        about: found.line,
        ...optionally(was === undefined ? undefined : routeWords(boat, was)),
        is: routeWords(boat, found.ways),
        edits: [{ edit: 'pin-route', params: { line: found.line, ways: [...found.ways], state } }],
      };
    }
    case 'wire':
      return {
        about: found.line,
        ...optionally(wasWire(plan, found.line)),
        is: `${found.areaMm2} mm²`,
        edits: [{ edit: 'pin-wire', params: { line: found.line, areaMm2: found.areaMm2, state } }],
      };
    case 'fuse':
      return {
        about: found.circuit,
        ...optionally(wasFuse(boat, plan, found.circuit)),
        is: `${found.ratingA} A`,
        edits: [{ edit: 'pin-fuse', params: { circuit: found.circuit, ratingA: found.ratingA, state } }],
      };
    case 'other':
      return { about: found.about, is: found.is, edits: [] };
  }
};

/**
 * The edits of one difference between the plan and the boat as she was found: the boat file follows the boat, so that the plan
 * and its papers show her as she is, and the difference is noted with what was planned, in words that stay.
 */
export const fittedEdits = (
  { boat, plan }: { readonly boat: Boat; readonly plan: Pick<Plan, 'lines' | 'feeds'> },
  found: FoundOtherwise,
  by: FoundBy,
): readonly EditCall[] => {
  const { edits, ...said } = saidOf(boat, plan, found);
  return [...edits, { edit: 'note-fitted', params: { ...said, what: found.what, ...by } }];
};
