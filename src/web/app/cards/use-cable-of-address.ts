import { type RefObject, useEffect, useRef } from 'react';
import type { LightStore } from '../../drawing/light-store.ts';
import type { SheetHandle } from '../../drawing/sheet-view.tsx';
import type { CardState } from './use-card.ts';

/** Opens the card of the cable an address names, such as the code on its label does, and takes the drawing to its line; once. */
export const useCableOfAddress = (
  cable: string | undefined,
  {
    card: { maker, open },
    lights,
    sheet,
    isDrawn,
  }: { card: CardState; lights: LightStore; sheet: RefObject<SheetHandle | null>; isDrawn: boolean },
): void => {
  const shown = useRef<string>(undefined);
  useEffect(() => {
    if (cable === undefined) shown.current = undefined;
    if (cable === undefined || maker === undefined || !isDrawn || shown.current === cable) return;
    shown.current = cable;
    const choice = { kind: 'line', label: cable } as const;
    const lit = maker.cardOf(choice)?.lights ?? [];
    open(choice);
    lights.pick(lit);
    if (lit.length > 0) sheet.current?.show(lit);
    // where the page is one column the card lies below the drawing; it comes with the next picture
    requestAnimationFrame(() =>
      document.querySelector('.card-head')?.scrollIntoView({ block: 'center', behavior: 'instant' }),
    );
  }, [cable, maker, isDrawn, open, lights, sheet]);
};
