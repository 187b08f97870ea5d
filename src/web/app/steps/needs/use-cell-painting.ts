import { type PointerEvent, useEffect, useRef, useState } from 'react';
import type { Ask } from '../../../../papers/needs/fill-cells.ts';

interface Painting {
  readonly ask: Ask;
  readonly keys: ReadonlySet<string>;
}

export interface CellPainting {
  /** cells that will be filled when the button is let go */
  readonly painted: ReadonlySet<string>;
  readonly onPointerDown: (event: PointerEvent, key: string, ask: Ask) => void;
  readonly onPointerEnter: (key: string) => void;
  /** true when a click only ends a painting that has filled its cells already */
  readonly endsPainting: () => boolean;
}

const nothing: ReadonlySet<string> = new Set();

/**
 * Filling many cells with one stroke of the mouse or pen: what the first cell becomes, all that are passed become. A
 * finger scrolls the table instead, and fills by tapping.
 */
export const useCellPainting = (fill: (keys: ReadonlySet<string>, ask: Ask) => void): CellPainting => {
  const [painting, setPainting] = useState<Painting | undefined>(undefined);
  const wasPainted = useRef<boolean>(false);
  useEffect(() => {
    if (painting === undefined) return;
    const finish = (): void => {
      setPainting(undefined);
      fill(painting.keys, painting.ask);
    };
    const giveUp = (): void => setPainting(undefined);
    window.addEventListener('pointerup', finish, { once: true });
    window.addEventListener('pointercancel', giveUp, { once: true });
    return () => {
      window.removeEventListener('pointerup', finish);
      window.removeEventListener('pointercancel', giveUp);
    };
  }, [painting, fill]);
  return {
    painted: painting?.keys ?? nothing,
    onPointerDown: ({ pointerType, button }, key, ask) => {
      wasPainted.current = pointerType !== 'touch' && button === 0;
      if (wasPainted.current) setPainting({ ask, keys: new Set([key]) });
    },
    onPointerEnter: (key) => {
      if (painting !== undefined && !painting.keys.has(key))
        setPainting({ ask: painting.ask, keys: new Set([...painting.keys, key]) });
    },
    endsPainting: () => {
      const was = wasPainted.current;
      wasPainted.current = false;
      return was;
    },
  };
};
