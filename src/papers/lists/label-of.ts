import type { LineEntry } from '../../core/plan-shape.ts';

/** The label of a line: the one it has, else the one it gets when labels are handed out next. */
export const labelOf = ({ label, nextLabel }: Pick<LineEntry, 'label' | 'nextLabel'>): string =>
  label ?? nextLabel ?? '';
