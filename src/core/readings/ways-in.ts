import type { Need } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { rememberFor } from '../boat/remember-for.ts';
import { stepsOf } from './reach.ts';
import type { Reaches } from './reaches.ts';
import type { Signal } from './signal.ts';
import { shortfalls, type Wanted, wantedOf } from './wanted.ts';

/** One way a need is met: the ports from source to screen and the units they belong to. */
export interface WayIn {
  readonly ports: readonly string[];
  readonly kit: readonly string[];
  /** as it is at each of the ports */
  readonly signals: readonly Signal[];
  /** as it comes in at the screen */
  readonly signal: Signal;
  /** what the need and the screen ask of it, which it meets */
  readonly wanted: Wanted;
}

const byLength = (a: WayIn, b: WayIn): number =>
  a.ports.length - b.ports.length || byCodeUnit(a.ports.join(' '), b.ports.join(' '));

/** A chart is shared by one screen with another: what a screen keeps to itself is not shared. */
const isOnlyFromOthers = (need: Need): boolean => need.reading === 'chart-share';

const waysFound = (reaches: Reaches, need: Need): readonly WayIn[] => {
  const hasVariation = reaches.has(need.at, 'variation');
  const met = (signal: Signal, wishes: readonly Wanted[]): Wanted | undefined =>
    wishes.find((wanted) => shortfalls(signal, wanted, hasVariation).length === 0);
  const own = isOnlyFromOthers(need) ? [] : reaches.ownOf(need.at, need.reading);
  const self = own.flatMap(({ node, signal }): WayIn[] => {
    const wanted = met(signal, [wantedOf(need)]);
    return wanted === undefined ? [] : [{ ports: [node.id], kit: [need.at], signals: [signal], signal, wanted }];
  });
  const heard = (reaches.of(need.reading).heard.get(need.at) ?? [])
    .filter(({ step }) => step.source.kit !== need.at)
    .flatMap(({ step, by }): WayIn[] => {
      const { signal } = step;
      const wanted = met(
        signal,
        by.map((one) => wantedOf(need, one)),
      );
      if (wanted === undefined) return [];
      const steps = stepsOf(step);
      return [
        {
          ports: steps.map(({ node }) => node.id),
          kit: steps.map(({ node }) => node.kit),
          signals: steps.map((one) => one.signal),
          signal,
          wanted,
        },
      ];
    });
  return [...self, ...heard].sort(byLength);
};

/** What of a need its ways hang on: whether it must arrive is no part of it. */
export const askedBy = ({ reading, instance, at, everyMs, reference, withOffset }: Need): string =>
  [reading, instance, at, everyMs, reference, withOffset].join(' ');

/** Ways are asked for again and again in one plan, and after an edit of one need those of the others are as they were. */
const waysKept = rememberFor({
  most: 2000,
  keyOf: ({ need }: { readonly reaches: Reaches; readonly need: Need }) => askedBy(need),
  find: (_of: Reaches['of'], { reaches, need }) => waysFound(reaches, need),
});

/** Every way by which a need is met as it asks to be, shortest first. */
export const waysInto = (reaches: Reaches, need: Need): readonly WayIn[] => waysKept(reaches.of, { reaches, need });
