import { portOf } from '../boat-index.ts';
import type { BoatProblem } from '../boat-problem.ts';
import { splitDotted } from '../ids.ts';
import type { FilePath } from '../place-in-file.ts';
import type { Panel } from '../supply.ts';
import { anyOf, type Known, linkTo, linkToPort } from './check-links.ts';

const checkFed = ({ index, dcdc }: Known, fed: string, path: FilePath): BoatProblem[] => {
  if (!fed.includes('.')) {
    const what = 'bus, bank, panel or DC converter';
    return linkTo(anyOf(index.buses, index.banks, index.panels, dcdc), { id: fed, what, path });
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
    ...panel.circuits.flatMap((circuit, at) =>
      circuit.feeds.flatMap((fed, fedAt) => checkFed(known, fed, [...path, 'circuits', at, 'feeds', fedAt])),
    ),
  ];
};

/** References of banks, panels, circuits and DC converters that lead to nothing or to the wrong kind of thing. */
export const checkSupply = (known: Known): BoatProblem[] => {
  const { banks, panels, dcdc } = known.index.boat.supply;
  const placed = (list: readonly { readonly place: string }[], path: FilePath): BoatProblem[] =>
    list.flatMap((entry, at) =>
      linkTo(known.index.places, { id: entry.place, what: 'place', path: [...path, at, 'place'] }),
    );
  return [
    ...placed(banks, ['supply', 'banks']),
    ...panels.flatMap((panel, at) => checkPanel(known, panel, ['supply', 'panels', at])),
    ...placed(dcdc, ['supply', 'dcdc']),
  ];
};
