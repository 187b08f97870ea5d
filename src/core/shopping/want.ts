import { byCodeUnit } from '../boat/ids.ts';
import { shoppingKinds } from '../facts/shopping-kinds.ts';
import type { ShoppingEntry } from '../plan-shape.ts';

/** Something to buy for one purpose; wants of one id become one item of the list. */
export interface Want extends Pick<ShoppingEntry, 'id' | 'item' | 'kind' | 'count' | 'by'> {
  readonly each?: number | undefined;
  readonly for: readonly string[];
  /** the reason, as a sentence */
  readonly why: string;
  /** what could change it; absent where it is sure */
  readonly doubt?: Doubt | undefined;
}

/** What could change an item, in words: lengths that may be taped shorter, ways that may be shut, anything else. */
export interface Doubt {
  readonly shorter?: readonly string[];
  readonly shut?: readonly string[];
  readonly other?: string;
}

const once = (words: readonly string[]): string[] => [...new Set(words)].sort(byCodeUnit);

const named = 2;

/** The first few of a list, and how many more there are: "A, B or another of 12". */
const someOf = (words: readonly string[]): string => {
  if (words.length <= named + 1) return words.join(' or ');
  return `${words.slice(0, named).join(', ')} or another of ${words.length}`;
};

/** The end of a sentence that starts "could change if"; absent where nothing could change it. */
const doubtWords = (doubts: readonly Doubt[]): string | undefined => {
  const [shorter, shut] = [
    once(doubts.flatMap((doubt) => doubt.shorter ?? [])),
    once(doubts.flatMap((doubt) => doubt.shut ?? [])),
  ];
  const parts = [
    ...(shorter.length === 0 ? [] : [`${someOf(shorter)} is taped shorter`]),
    ...(shut.length === 0 ? [] : [`${someOf(shut)} is shut`]),
    ...once(doubts.flatMap(({ other }) => other ?? [])),
  ];
  return parts.length === 0 ? undefined : parts.join('; or if ');
};

const mergedWant = (wants: readonly Want[], first: Want): ShoppingEntry => {
  const sum = wants.reduce((count, want) => count + want.count, 0);
  const couldChangeIf = doubtWords(wants.flatMap(({ doubt }) => doubt ?? []));
  return {
    id: first.id,
    item: first.item,
    kind: first.kind,
    // A metre begun is a metre bought; the millionth keeps 3.0000000004 m from being four.
    count: first.by === 'metre' ? Math.ceil(sum - 1e-6) : sum,
    by: first.by,
    ...(first.each === undefined ? {} : { each: first.each }),
    for: once(wants.flatMap((want) => want.for)),
    why: once(wants.map(({ why }) => why)).join(' '),
    sure: couldChangeIf === undefined,
    ...(couldChangeIf === undefined ? {} : { couldChangeIf }),
  };
};

/** Wants gathered into the items of a list: by kind in the order they are shopped in, then by id. */
export const mergeWants = (wants: readonly Want[]): ShoppingEntry[] => {
  const byId = new Map<string, Want[]>();
  for (const want of wants) {
    const same = byId.get(want.id);
    if (same === undefined) byId.set(want.id, [want]);
    else same.push(want);
  }
  return [...byId.values()]
    .flatMap((same) => same.slice(0, 1).map((first) => mergedWant(same, first)))
    .sort(
      (one, other) =>
        shoppingKinds.indexOf(one.kind) - shoppingKinds.indexOf(other.kind) || byCodeUnit(one.id, other.id),
    );
};
