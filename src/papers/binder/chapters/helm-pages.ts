import type { Boat } from '../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../core/plan-shape.ts';
import { cardBoat } from '../../cards/card-boat.ts';
import { helmPage } from '../../helm/helm-page.ts';
import { helms } from '../../helm/helms.ts';
import type { Chapter } from '../binder-shape.ts';

/** A chapter for each helm: one page to be laminated and hung there. */
export const helmChapters = (boat: Boat, plan: Plan): Chapter[] => {
  const index = cardBoat(boat);
  return helms(boat, plan).map((helm) => ({
    id: `helm-${helm.place}`,
    title: `At the helm: ${index.places.get(helm.place)?.name ?? helm.place}`,
    blocks: helmPage(index, plan, helm),
  }));
};
