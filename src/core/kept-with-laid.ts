import type { BoatIndex } from './boat/boat-index.ts';
import type { Boat } from './boat/boat-schema.ts';
import { boatText } from './boat/boat-text.ts';
import { keptFor } from './boat/kept-for.ts';
import { rememberFor } from './boat/remember-for.ts';
import { withoutNeeds } from './joins/standing-boat.ts';

/** What is said of a boat beside what she is laid from, as far as a part of her plan looks at it. */
type Said = Partial<Pick<Boat, 'needs' | 'sources' | 'measures' | 'papers' | 'sea'>>;

/** The needs as they are asked for, whether a reading must arrive or is only wished for. */
const asAsked = keptFor((needs: Boat['needs']): Boat['needs'] => needs.map((need) => ({ ...need, must: true })));

/** What says which readings go where: what is needed, by which source where a person chose one. */
export const saidOfSources = ({ needs, sources }: Boat): Said => ({
  needs: asAsked(needs),
  ...(sources === undefined ? {} : { sources }),
});

/** What is typed in of a boat, and what was tried with her at sea. */
export const saidOfSettings = ({ measures, papers, sea }: Boat): Said => ({
  ...(measures === undefined ? {} : { measures }),
  ...(papers === undefined ? {} : { papers }),
  ...(sea === undefined ? {} : { sea }),
});

/** How many answers are kept with a boat as she is laid: the phases looked at, and the edit before. */
const most = 4;

/**
 * A part of a plan that hangs on how a boat is laid, on the phase, and on what `saidOf` tells: it is shown nothing else of
 * her, and kept while these stand.
 */
export const keptWithLaid = <Laid extends object, Answer>(
  saidOf: (boat: Boat) => Said,
  find: (laid: Laid, index: BoatIndex, phase: number) => Answer,
): ((laid: Laid, index: BoatIndex, phase: number) => Answer) => {
  const kept = rememberFor({
    most,
    keyOf: ({ phase, said }: { readonly index: BoatIndex; readonly phase: number; readonly said: Said }) =>
      `${phase}\n${boatText(said)}`,
    find: (laid: Laid, { index, phase, said }) =>
      find(laid, { ...index, boat: { ...withoutNeeds(index.boat), ...said } }, phase),
  });
  return (laid, index, phase) => kept(laid, { index, phase, said: saidOf(index.boat) });
};
