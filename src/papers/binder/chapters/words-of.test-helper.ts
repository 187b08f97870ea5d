import type { ListCell } from '../../table/list-table.ts';
import type { Chapter } from '../binder-shape.ts';

/** All that a chapter says, a line each, hard spaces as plain ones. */
export const wordsOf = ({ blocks }: Chapter): string =>
  blocks
    .flatMap((block): ListCell[] => {
      if (block.kind === 'points') return [...block.points];
      if (block.kind === 'table') return block.table.rows.flat();
      return block.kind === 'words' || block.kind === 'heading' ? [block.text] : [];
    })
    .join('\n')
    .replaceAll('\u00A0', ' ');
