import { el } from '../dom/el.ts';
import type { BoatOnLaptop } from '../link/pairing.ts';
import { words } from '../words.ts';

/** The boats of the laptop, to choose one. */
export const boatsScreen = (
  boats: readonly BoatOnLaptop[],
  { isHeard, open }: { readonly isHeard: boolean; readonly open: (boat: BoatOnLaptop) => void },
): HTMLElement =>
  el(
    'section',
    {},
    el('h2', {}, words.chooseBoat),
    isHeard ? undefined : el('p', {}, words.boatsUnheard),
    isHeard && boats.length === 0 ? el('p', {}, words.noBoats) : undefined,
    el(
      'ul',
      { class: 'rows' },
      ...boats.map((boat) =>
        el('li', {}, el('button', { type: 'button', class: 'wide', on: { click: () => open(boat) } }, boat.name)),
      ),
    ),
  );
