import type { ReactNode } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import { currencyOf } from '../../../../papers/lists/cure-words.ts';
import { cellWords } from '../../../../papers/needs/cell-words.ts';
import type { NeedsCell, NeedsRow } from '../../../../papers/needs/needs-matrix.ts';
import { WhyNotView } from '../../cards/why-not-view.tsx';
import { Explained } from '../../words/explained.tsx';
import { UsualAt } from './offers/usual-at.tsx';
import { words } from './words.ts';

const capital = (name: string): string => `${name.charAt(0).toUpperCase()}${name.slice(1)}`;

const wayWords = (boat: Boat, ports: readonly string[]): string => {
  const names = new Map(boat.kit.map(({ id, name }) => [id, name]));
  const units = [...new Set(ports.map((port) => port.slice(0, port.indexOf('.'))))];
  return units.map((unit) => names.get(unit) ?? unit).join(' → ');
};

/** What there is to say about one cell: the way of its reading, or the gap in it and what would close it. */
export const NeedsDetail = ({
  boat,
  at,
}: {
  boat: Boat;
  at: { readonly row: NeedsRow; readonly cell: NeedsCell; readonly name: string } | undefined;
}): ReactNode => {
  if (at === undefined) return <p className="quiet">{words.howTo}</p>;
  const { entry } = at.cell;
  return (
    <>
      <p>
        <strong>{words.readingAt(capital(at.row.name), at.name)}</strong>: <Explained text={cellWords(at.cell)} />.
      </p>
      {entry?.arrives === true ? <p className="quiet">{wayWords(boat, entry.by)}</p> : null}
      <UsualAt boat={boat} unit={at.cell.unit} name={at.name} />
      {entry?.whyNot === undefined ? null : <WhyNotView whyNot={entry.whyNot} currency={currencyOf(boat)} />}
    </>
  );
};
