import { useEffect, useState } from 'react';

/**
 * A part of the app that is no part of the way to the first picture, brought once the page stands; undefined until it
 * has come. `bring` must be the same function every time; a part is kept by the browser once it was brought.
 *
 * @example const cards = usePart(bringCards); // const bringCards = () => import('./cards/card-view.tsx')
 */
export const usePart = <Part>(bring: () => Promise<Part>): Part | undefined => {
  const [part, setPart] = useState<Part | undefined>(undefined);
  useEffect(() => {
    let isGone = false;
    void bring().then((brought) => {
      if (!isGone) setPart(() => brought);
    });
    return () => {
      isGone = true;
    };
  }, [bring]);
  return part;
};
