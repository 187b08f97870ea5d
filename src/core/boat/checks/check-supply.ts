import { portOf } from '../boat-index.ts';
import type { BoatProblem } from '../boat-problem.ts';
import { splitDotted } from '../ids.ts';
import type { FilePath } from '../place-in-file.ts';
import type { Charger, Panel } from '../supply.ts';
import { anyOf, type Known, linkTo, linkToPort } from './check-links.ts';

const checkFed = ({ index, dcdc }: Known, fed: string, path: FilePath): BoatProblem[] => {
  if (!fed.includes('.')) {
    const what = 'bus, bank, panel, DC converter or charger';
    const chargers = new Set((index.boat.supply.chargers ?? []).map(({ id }) => id));
    return linkTo(anyOf(index.buses, index.banks, index.panels, dcdc, chargers), { id: fed, what, path });
  }
  const { kit, part } = splitDotted(fed);
  const missing = linkToPort(index, { kit, port: part, path });
  const port = portOf(index, fed);
  if (port === undefined || port.protocol === 'dc') return missing;
  return [
    {
      path,
      says: `A circuit feeds a dc port or a bus, and the port "${fed}" is ${port.protocol}.`,
      whatToDo: 'Name the dc port of the unit, or the bus it is powered by.',
    },
  ];
};

const feedsItself = (panels: ReadonlyMap<string, Panel>, panel: Panel): boolean => {
  let above = panels.get(panel.from);
  for (let steps = 0; above !== undefined && steps < panels.size; steps += 1) {
    if (above.id === panel.id) return true;
    above = panels.get(above.from);
  }
  return false;
};

/** What a panel says of its own protection against what else it says. */
const checkSaid = (panel: Panel, path: FilePath): BoatProblem[] => [
  ...(panel.main?.kind === 'none' && panel.mainA !== undefined
    ? [
        {
          path: [...path, 'mainA'],
          says: `The panel "${panel.id}" has no main fuse, and one of ${panel.mainA} A.`,
          whatToDo: 'Take out mainA, or say what kind its main protection is.',
        },
      ]
    : []),
];

const checkTap = ({ index }: Known, panel: Panel, path: FilePath): BoatProblem[] => {
  const nominalV = index.banks.get(panel.from)?.nominalV;
  if (panel.tapV === undefined || (nominalV !== undefined && panel.tapV < nominalV)) return [];
  return [
    {
      path: [...path, 'tapV'],
      says: `The panel "${panel.id}" takes ${panel.tapV} V from a tap, and "${panel.from}" is no bank of more volts.`,
      whatToDo: 'Name the bank whose batteries it hangs between, or take out tapV.',
    },
  ];
};

const checkCharger = ({ index, dcdc }: Known, charger: Charger, path: FilePath): BoatProblem[] => [
  ...linkTo(index.places, { id: charger.place, what: 'place', path: [...path, 'place'] }),
  ...charger.charges.flatMap((id, at) => linkTo(index.banks, { id, what: 'bank', path: [...path, 'charges', at] })),
  ...(charger.is === undefined
    ? []
    : linkTo(anyOf(index.kit, dcdc), { id: charger.is, what: 'unit or DC converter', path: [...path, 'is'] })),
];

const checkPanel = (known: Known, panel: Panel, path: FilePath): BoatProblem[] => {
  const { index, dcdc } = known;
  const sources = anyOf(index.banks, index.panels, dcdc);
  const what = 'bank, panel or DC converter';
  return [
    ...linkTo(index.places, { id: panel.place, what: 'place', path: [...path, 'place'] }),
    ...linkTo(sources, { id: panel.from, what, path: [...path, 'from'] }),
    ...(feedsItself(index.panels, panel)
      ? [
          {
            path: [...path, 'from'],
            says: `The panel "${panel.id}" is fed by itself, straight or through other panels.`,
            whatToDo: 'Name the bank or the panel nearer the bank that feeds it.',
          },
        ]
      : []),
    ...checkSaid(panel, path),
    ...checkTap(known, panel, path),
    ...panel.circuits.flatMap((circuit, at) =>
      circuit.feeds.flatMap((fed, fedAt) => checkFed(known, fed, [...path, 'circuits', at, 'feeds', fedAt])),
    ),
  ];
};

/** References of banks, panels, circuits, DC converters and chargers that lead to nothing or to the wrong kind of thing. */
export const checkSupply = (known: Known): BoatProblem[] => {
  const { banks, panels, dcdc, chargers = [], negativeAt } = known.index.boat.supply;
  const placed = (list: readonly { readonly place: string }[], path: FilePath): BoatProblem[] =>
    list.flatMap((entry, at) =>
      linkTo(known.index.places, { id: entry.place, what: 'place', path: [...path, at, 'place'] }),
    );
  return [
    ...placed(banks, ['supply', 'banks']),
    ...panels.flatMap((panel, at) => checkPanel(known, panel, ['supply', 'panels', at])),
    ...placed(dcdc, ['supply', 'dcdc']),
    ...chargers.flatMap((charger, at) => checkCharger(known, charger, ['supply', 'chargers', at])),
    ...(negativeAt === undefined
      ? []
      : linkTo(known.index.places, { id: negativeAt, what: 'place', path: ['supply', 'negativeAt'] })),
  ];
};
