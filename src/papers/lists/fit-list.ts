import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { ListTable } from '../table/list-table.ts';
import { reasonWords, verdictWords } from '../templates/fit-words.ts';

type Named = readonly { readonly id: string; readonly name: string }[];
const nameIn = (list: Named, id: string): string => list.find((one) => one.id === id)?.name ?? id;

/** Every opening in a panel with what comes there and what is to be done; what goes through the hull is on the list of that. */
export const fitList = (boat: Boat, plan: Plan): ListTable => {
  const openings = boat.openings ?? [];
  const inPanels = plan.fits.filter(({ opening }) => openings.find(({ id }) => id === opening)?.throughHull !== true);
  return {
    id: 'fits',
    title: 'Openings in panels',
    says: 'Each old hole against what comes there. Sizes in millimetres; a unit is set where it lies best over its hole, which need not be the middle.',
    columns: [
      { id: 'place', head: 'place', share: 1.6, once: true },
      { id: 'opening', head: 'opening', share: 1.5 },
      { id: 'width', head: 'wide', unit: 'mm', kind: 'figure', share: 0.6 },
      { id: 'height', head: 'high', unit: 'mm', kind: 'figure', share: 0.6 },
      { id: 'unit', head: 'comes there', share: 1.5 },
      { id: 'verdict', head: 'to do', share: 1.8 },
      { id: 'why', head: 'because', share: 2.6 },
      { id: 'cut', head: 'template', share: 0.9 },
    ],
    rows: inPanels.map((fit) => [
      nameIn(boat.places, fit.place),
      nameIn(openings, fit.opening),
      fit.hole.widthMm,
      fit.hole.heightMm,
      fit.unit === undefined ? 'nothing' : nameIn(boat.kit, fit.unit),
      verdictWords(fit, plan),
      reasonWords(fit),
      ['enlarge', 'plate', 'close'].includes(fit.verdict)
        ? fit.notForCutting === undefined
          ? 'to cut by'
          : 'not for cutting'
        : undefined,
    ]),
    empty: 'No opening in a panel is entered.',
  };
};
