import type { Need } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import type { Hears } from '../boat/sheet.ts';
import { readingWords } from '../facts/reading-words.ts';
import { type Step, stepsOf } from './reach.ts';
import type { Reaches } from './reaches.ts';
import type { Signal } from './signal.ts';
import { type Shortfall, shortfalls, type Wanted, wantedOf } from './wanted.ts';
import { asMessage, unitWords, type WhyNot } from './why-words.ts';

/** A signal that is at the screen but falls short, and where it first did. */
interface Poor {
  readonly kind: Shortfall;
  readonly wanted: Wanted;
  readonly steps: readonly Pick<Step, 'node' | 'signal'>[];
  /** place in `steps` from which on it falls short */
  readonly since: number;
  readonly missed: number;
}

const order: readonly Shortfall[] = ['wrong-instance', 'no-offset', 'wrong-reference', 'too-slow'];

const poorOf = (steps: Poor['steps'], wanted: Wanted, hasVariation: boolean): Poor | undefined => {
  const last = steps.at(-1);
  const missing = last === undefined ? [] : shortfalls(last.signal, wanted, hasVariation);
  const found = missing.map((kind) => {
    const good = steps.findLastIndex(({ signal }) => !shortfalls(signal, wanted, hasVariation).includes(kind));
    return { kind, wanted, steps, since: good + 1, missed: missing.length };
  });
  return found.sort((a, b) => b.since - a.since || order.indexOf(a.kind) - order.indexOf(b.kind))[0];
};

const wayWords = ({ steps }: Poor): string => steps.map(({ node }) => node.id).join(' ');

const remaining = ({ steps, since }: Poor): number => steps.length - since;

const byMerit = (a: Poor, b: Poor): number =>
  a.missed - b.missed ||
  remaining(a) - remaining(b) ||
  a.steps.length - b.steps.length ||
  byCodeUnit(wayWords(a), wayWords(b));

const instanceWords = (signal: Signal): string =>
  signal.instance === undefined ? 'without an instance number' : `as instance ${signal.instance}`;

type Words = Pick<WhyNot, 'says' | 'cures'>;

const says = (reaches: Reaches, { kind, wanted, steps, since }: Poor, need: Need): Words => {
  const { index } = reaches.network;
  const step = steps[since] ?? steps[0];
  if (step === undefined) return { says: '', cures: [] };
  const [unit, screen] = [unitWords(index, step.node.kit), unitWords(index, need.at)];
  const reading = readingWords[need.reading];
  const sends = `${unit} sends ${reading}${asMessage(step.signal)}`;
  switch (kind) {
    case 'wrong-instance':
      return { says: `${sends} ${instanceWords(step.signal)}; instance ${wanted.instance} is needed.`, cures: [] };
    case 'wrong-reference':
      return referenceWords({ sends, screen, reading, wanted, signal: step.signal });
    case 'no-offset':
      return {
        says: `${sends}, which leaves the offset behind; ${screen} needs it.`,
        cures: step.signal.message === 'DBT' ? [`Let ${unit} send DPT in place of DBT, if it can.`] : [],
      };
    case 'too-slow':
      return {
        says: `${sends} every ${step.signal.everyMs} ms; ${screen} needs it every ${wanted.everyMs} ms.`,
        cures: [],
      };
  }
};

interface ReferenceCase {
  readonly sends: string;
  readonly screen: string;
  readonly reading: string;
  readonly wanted: Wanted;
  readonly signal: Signal;
}

const referenceWords = ({ sends, screen, reading, wanted, signal }: ReferenceCase): Words => {
  const [reference = '', other] = wanted.references;
  if (other !== undefined)
    return {
      says: `${screen} takes ${reading} only as ${other}, and it is needed as ${reference}.`,
      cures: [`Ask for ${reading} as ${other}.`],
    };
  if (signal.reference === 'lost')
    return { says: `${sends} without saying which reference it has; ${reference} is needed.`, cures: [] };
  const isHeading = reference === 'true' || reference === 'magnetic';
  return {
    says: `${sends} as ${signal.reference}; ${reference} is needed.`,
    cures: isHeading ? [`Bring variation to ${screen}.`] : [],
  };
};

/** Two references asked for at once are nobody's link: the break is at the screen. */
const linkOf = ({ kind, wanted, steps, since }: Poor): WhyNot['link'] => {
  const [from, to, screen] = [steps[since], steps[since + 1], steps.at(-1)];
  const isContradiction = kind === 'wrong-reference' && wanted.references.length > 1;
  if (isContradiction || from === undefined || to === undefined)
    return { broken: kind, ...(screen === undefined ? {} : { to: screen.node.id }) };
  return { broken: kind, from: from.node.id, to: to.node.id };
};

/**
 * Why what is at the screen is not good enough: other instance, other reference, no offset, too slow. The link is the
 * wire on which it first fell short for good. Undefined when nothing of the reading is at the screen.
 */
export const tooPoor = (reaches: Reaches, need: Need): WhyNot | undefined => {
  const hasVariation = reaches.has(need.at, 'variation');
  const poor = (steps: Poor['steps'], by?: Hears): Poor[] => {
    const found = poorOf(steps, wantedOf(need, by), hasVariation);
    return found === undefined ? [] : [found];
  };
  const heard = (reaches.of(need.reading).heard.get(need.at) ?? [])
    .filter(({ step }) => step.source.kit !== need.at)
    .flatMap(({ step, by }) => by.flatMap((one) => poor(stepsOf(step), one)));
  const own = reaches.ownOf(need.at, need.reading).flatMap((step) => poor([step]));
  const [best] = [...heard, ...own].sort(byMerit);
  return best === undefined ? undefined : { link: linkOf(best), ...says(reaches, best, need) };
};
