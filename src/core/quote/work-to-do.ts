import type { BoatIndex } from '../boat/boat-index.ts';
import type { QuoteTask } from '../facts/quote-figures.ts';
import type { Plan } from '../plan-shape.ts';
import { lineWork } from './line-work.ts';
import type { QuotePart, Work } from './quote-shape.ts';
import { unitWork } from './unit-work.ts';

/** What a quote counts work from. */
export type WorkedPlan = Pick<Plan, 'lines' | 'ways' | 'passages'>;

/** Coax plugs within the task of one radio with its antenna: one at either end of its cable. */
const plugsOfRadio = 2;

const isCoaxPlug = ({ id }: QuotePart): boolean => /^plug-(so239|tnc)/.test(id);

/** Plugs fitted to cables aboard, by phase, less those that fitting a radio takes in. */
const plugWork = (parts: readonly QuotePart[], work: readonly Work[]): Work[] => {
  const plugs = parts.filter(({ kind, id }) => kind === 'plug' && /plug/.test(id));
  return [...new Set(plugs.map(({ phase }) => phase))].flatMap((phase): Work[] => {
    const here = plugs.filter((plug) => plug.phase === phase);
    const sum = (own: readonly QuotePart[]): number => own.reduce((all, { count }) => all + count, 0);
    const radios = work.filter((one) => one.phase === phase && one.task === 'vhf').length;
    const coax = Math.max(0, sum(here.filter(isCoaxPlug)) - plugsOfRadio * radios);
    const count = coax + sum(here.filter((plug) => !isCoaxPlug(plug)));
    return count === 0 ? [] : [{ task: 'fit-plug', count, phase }];
  });
};

/** What is done once for the boat, or once a phase, where there is any work at all. */
const wholeWork = (index: BoatIndex, work: readonly Work[]): Work[] => {
  const phases = [...new Set(work.map(({ phase }) => phase))].sort((a, b) => a - b);
  const [first, last] = [phases[0], phases.at(-1)];
  if (first === undefined || last === undefined) return [];
  const once = (task: QuoteTask, phase: number): Work => ({ task, count: 1, phase });
  const steered = index.boat.kit.filter(({ id, fate }) => {
    const kind = index.sheetOf.get(id)?.kind ?? '';
    return fate === 'comes' && ['pilot', 'pilot-computer', 'heading-sensor'].includes(kind);
  });
  return [
    once('survey', first),
    ...phases.map((phase) => once('commission', phase)),
    ...(steered.length === 0 ? [] : [once('sea-trial', Math.max(...steered.map(({ phase = 1 }) => phase)))]),
    once('as-built', last),
  ];
};

/** All work of a refit, each piece with what it is for: units, lines, ways, plugs, and what is done once. */
export const workToDo = (index: BoatIndex, plan: WorkedPlan, parts: readonly QuotePart[]): Work[] => {
  const work = [...unitWork(index), ...lineWork(index, plan)];
  const all = [...work, ...plugWork(parts, work)];
  return [...all, ...wholeWork(index, all)];
};
