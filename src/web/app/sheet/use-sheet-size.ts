import { type RefObject, useLayoutEffect, useState } from 'react';
import { flushSync } from 'react-dom';
import type { SheetSize } from '../../drawing/view-frame.ts';

/** One CSS pixel, by definition 1/96 inch. */
const mmPerPx = 25.4 / 96;

/** While a window is being pulled larger, the sheet is drawn anew only once the hand rests. */
const restMs = 120;

/** Where the page is one column, it scrolls past a sheet that is as high as it needs to be (sheet.css, same width). */
const isOneColumn = (): boolean => window.matchMedia('(max-width: 900px)').matches;
const oneColumnShare = 0.64;

/** The sheet takes the size of the window it lies in, in whole millimetres. */
const sizeOf = (element: Element): SheetSize => {
  const { width, height } = element.getBoundingClientRect();
  const heightPx = isOneColumn() ? oneColumnShare * document.documentElement.clientHeight : height;
  return { widthMm: Math.floor(width * mmPerPx), heightMm: Math.floor(heightPx * mmPerPx) };
};

/** What an A4 sheet lying on its side leaves for the drawing; larger paper shows the same larger. */
const paperSize: SheetSize = { widthMm: 277, heightMm: 174 };

/** Size of the sheet in millimetres of the screen; undefined until its window is laid out. */
export const useSheetSize = (frame: RefObject<HTMLElement | null>): SheetSize | undefined => {
  const [size, setSize] = useState<SheetSize | undefined>(undefined);
  useLayoutEffect(() => {
    const element = frame.current;
    if (element === null) return;
    let isForPaper = false;
    const measure = (): void => {
      if (isForPaper) return;
      const next = sizeOf(element);
      if (next.widthMm === 0 || next.heightMm === 0) return;
      setSize((old) => (old?.widthMm === next.widthMm && old.heightMm === next.heightMm ? old : next));
    };
    measure();
    let timer: ReturnType<typeof setTimeout> | undefined;
    const observer = new ResizeObserver(() => {
      clearTimeout(timer);
      timer = setTimeout(measure, restMs);
    });
    observer.observe(element);
    // a print is drawn for paper, also from a phone; the browser prints as soon as this returns
    const forPaper = (): void => {
      isForPaper = true;
      flushSync(() => setSize(paperSize));
    };
    const forScreen = (): void => {
      isForPaper = false;
      measure();
    };
    window.addEventListener('beforeprint', forPaper);
    window.addEventListener('afterprint', forScreen);
    return () => {
      clearTimeout(timer);
      observer.disconnect();
      window.removeEventListener('beforeprint', forPaper);
      window.removeEventListener('afterprint', forScreen);
    };
  }, [frame]);
  return size;
};
