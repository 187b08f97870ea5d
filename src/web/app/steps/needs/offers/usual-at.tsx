import { type ReactNode, useMemo } from 'react';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import { offeredUsual } from '../../../../../papers/needs/offered-needs.ts';
import { useEdit } from '../../../edit-context.ts';
import { words } from './words.ts';

/** The usual needs of the screen whose column one is in, with one press; nothing where it has them all. */
export const UsualAt = ({ boat, unit, name }: { boat: Boat; unit: string; name: string }): ReactNode => {
  const edit = useEdit();
  const offered = useMemo(() => offeredUsual(boat, unit), [boat, unit]);
  if (offered === undefined) return null;
  return (
    <p>
      <button type="button" className="press-link" onClick={() => edit(offered.edits, offered.title)}>
        {words.usualAt(name, offered.count)}
      </button>
    </p>
  );
};
