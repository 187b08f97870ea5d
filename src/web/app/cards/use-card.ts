import { useCallback, useMemo, useRef, useState } from 'react';
import type { LightStore } from '../../drawing/light-store.ts';
import type { PlanAnswer } from '../../workers/protocol.ts';
import { usePart } from '../use-part.ts';
import type { CardChoice, CardContent, CardMaker } from './card-choice.ts';

/** The card in the margin: what it speaks of now, and where one came from. */
export interface CardState {
  /** undefined until what cards need has come, which is no part of the way to the first picture */
  readonly maker: CardMaker | undefined;
  readonly content: CardContent | undefined;
  /** goes back to the card this one was opened from; undefined where there is none */
  readonly goBack: (() => void) | undefined;
  readonly open: (choice: CardChoice | undefined) => void;
  /** opens a card from this one, and lights what it speaks of */
  readonly goOn: (choice: CardChoice) => void;
  readonly close: () => void;
}

/** Gives the keyboard back to what opened the card, if that is still there to take it. */
const giveBack = (opener: HTMLElement | SVGElement | undefined): void => {
  const isThere = opener?.isConnected === true && opener.getClientRects().length > 0;
  const next = isThere ? opener : document.querySelector<HTMLElement>('.sheet-frame');
  next?.focus({ preventScroll: true });
};

const isFocusable = (element: Element | null): element is HTMLElement | SVGElement =>
  element instanceof HTMLElement || element instanceof SVGElement;

const bringMaker = () => import('./card-choice.ts');

/** Keeps which card is open, made anew with every plan; a card whose unit has gone from the boat is shut. */
export const useCard = ({ boat, plan }: PlanAnswer, lights: LightStore): CardState => {
  const make = usePart(bringMaker)?.cardMaker;
  const maker = useMemo(() => make?.(boat, plan), [make, boat, plan]);
  const [trail, setTrail] = useState<readonly CardChoice[]>([]);
  const opener = useRef<HTMLElement | SVGElement>(undefined);
  const choice = trail.at(-1);
  const content = useMemo(() => (choice === undefined ? undefined : maker?.cardOf(choice)), [maker, choice]);

  const open = useCallback((next: CardChoice | undefined) => {
    const active = document.activeElement;
    if (isFocusable(active) && active.closest('.card') === null) opener.current = active;
    setTrail(next === undefined ? [] : [next]);
  }, []);
  const goTo = (next: readonly CardChoice[]): void => {
    const last = next.at(-1);
    setTrail(next);
    // what is rested on goes with its card and can no longer say that the rest is over
    lights.rest([]);
    lights.pick(last === undefined ? [] : (maker?.cardOf(last)?.lights ?? []));
  };
  const close = (): void => {
    goTo([]);
    giveBack(opener.current);
  };
  const goBack = trail.length > 1 ? () => goTo(trail.slice(0, -1)) : undefined;
  return { maker, content, goBack, open, goOn: (next) => goTo([...trail, next]), close };
};
