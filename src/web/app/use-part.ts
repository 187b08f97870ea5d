import { useEffect, useState } from 'react';
import { firstPictureSeen } from '../drawing/first-picture.ts';

/** Parts that have come, by what brought them: whatever wants one again has it at once, and nothing flickers. */
const come = new WeakMap<() => Promise<unknown>, unknown>();

/**
 * A part of the app that is no part of the way to the first picture, brought once that is seen; undefined until it has
 * come. `bring` must be the same function every time; a part that came once is there from the first drawing on.
 *
 * @example const cards = usePart(bringCards); // const bringCards = () => import('./cards/card-view.tsx')
 */
export const usePart = <Part>(bring: () => Promise<Part>): Part | undefined => {
  // reason: what is kept under a function is what that function brought
  const [part, setPart] = useState<Part | undefined>(() => come.get(bring) as Part | undefined);
  useEffect(() => {
    let isGone = false;
    void firstPictureSeen.then(bring).then((brought) => {
      come.set(bring, brought);
      if (!isGone) setPart(() => brought);
    });
    return () => {
      isGone = true;
    };
  }, [bring]);
  return part;
};
