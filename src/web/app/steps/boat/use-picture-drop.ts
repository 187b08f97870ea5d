import { type RefObject, useEffect, useRef } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { ScaledView } from '../../../../papers/sheet/view.ts';
import { onSheet } from '../../../drawing/spots.ts';
import type { MakeEdits } from '../../edit-context.ts';
import { holdInHand } from './place-hand.ts';
import { takePicture } from './take-picture.ts';
import { words } from './words.ts';

interface DropOn {
  readonly boat: Boat;
  readonly views: readonly ScaledView[];
  readonly edit: MakeEdits;
}

/** Takes a picture that is dropped on the drawing, under the view it is dropped on; any other file is left to the page. */
export const usePictureDrop = (frame: RefObject<HTMLElement | null>, on: DropOn): void => {
  const latest = useRef(on);
  latest.current = on;
  useEffect(() => {
    const window = frame.current;
    if (window === null) return undefined;
    const drop = (event: DragEvent): void => {
      const file = event.dataTransfer?.files[0];
      const point = onSheet(window, { x: event.clientX, y: event.clientY });
      if (file?.type.startsWith('image/') !== true || point === undefined) return;
      event.preventDefault();
      // the page takes what is dropped on it for a boat
      event.stopPropagation();
      const top = latest.current.views.find(({ name }) => name === 'top');
      const isTop = top !== undefined && point[1] >= top.box.topMm && point[1] <= top.box.bottomMm;
      holdInHand(undefined, words.pictureBusy);
      void takePicture(latest.current, isTop ? 'top' : 'side', file).then((says) => holdInHand(undefined, says));
    };
    window.addEventListener('drop', drop);
    return () => window.removeEventListener('drop', drop);
  }, [frame]);
};
