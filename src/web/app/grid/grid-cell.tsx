import { type KeyboardEvent, type ReactNode, useEffect, useId, useRef } from 'react';
import type { TableColumn } from '../../../papers/tables/table-shape.ts';

/** The field of a cell that is being typed in; what may be chosen is offered under it, and may be typed. */
const CellField = ({
  column,
  label,
  text,
  onType,
  onDone,
}: {
  column: TableColumn;
  label: string;
  text: string;
  onType: (text: string) => void;
  /** done by a key, or by going elsewhere (no key) */
  onDone: (key: string | undefined) => void;
}): ReactNode => {
  const field = useRef<HTMLInputElement>(null);
  const list = useId();
  const choices = column.choices ?? [];
  // a key that ends the typing takes the field away, which is no second end
  const isEnded = useRef<boolean>(false);
  const end = (key: string | undefined): void => {
    if (isEnded.current) return;
    isEnded.current = true;
    onDone(key);
  };
  useEffect(() => {
    field.current?.focus();
    field.current?.setSelectionRange(field.current.value.length, field.current.value.length);
  }, []);
  const onKeyDown = (event: KeyboardEvent): void => {
    event.stopPropagation();
    if (event.key !== 'Enter' && event.key !== 'Escape' && event.key !== 'Tab') return;
    event.preventDefault();
    end(event.key === 'Tab' && event.shiftKey ? 'BackTab' : event.key);
  };
  return (
    <>
      <input
        ref={field}
        value={text}
        aria-label={label}
        placeholder={column.hint ?? ''}
        autoComplete="off"
        {...(choices.length > 0 ? { list } : {})}
        onChange={(event) => onType(event.target.value)}
        onKeyDown={onKeyDown}
        onBlur={() => end(undefined)}
      />
      {choices.length === 0 ? null : (
        <datalist id={list}>
          {choices.map(({ value, says }) => (
            <option key={value} value={says} />
          ))}
        </datalist>
      )}
    </>
  );
};

/** One cell: its text, or the field to type in while it is being typed in. */
export const GridCell = ({
  column,
  label,
  text,
  typing,
  isHere,
  isMarked,
  isFixed,
  onPoint,
  onType,
  onDone,
}: {
  column: TableColumn;
  /** what the cell is called to those who cannot see where it stands */
  label: string;
  text: string;
  /** what is typed so far; undefined while it is not typed in */
  typing: string | undefined;
  isHere: boolean;
  isMarked: boolean;
  isFixed: boolean;
  /** pressed once to go there, again or twice to type there; `isMarking` with Shift */
  onPoint: (how: { readonly isMarking: boolean; readonly isTwice: boolean }) => void;
  onType: (text: string) => void;
  onDone: (key: string | undefined) => void;
}): ReactNode => {
  const cell = useRef<HTMLTableCellElement>(null);
  const isTyping = typing !== undefined;
  useEffect(() => {
    if (isHere && !isTyping && document.activeElement?.closest('.grid-scroll') !== null) cell.current?.focus();
  }, [isHere, isTyping]);
  const kind = [
    ...(column.isFigure === true ? ['figure-cell'] : []),
    ...(isMarked ? ['marked'] : []),
    ...(isFixed ? ['fixed'] : []),
  ].join(' ');
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: the table has the keys
    <td
      ref={cell}
      // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a cell of a grid is gone to and typed in
      role="gridcell"
      className={kind === '' ? undefined : kind}
      tabIndex={isHere ? 0 : -1}
      aria-selected={isMarked}
      aria-readonly={isFixed}
      onClick={(event) => onPoint({ isMarking: event.shiftKey, isTwice: event.detail > 1 || isHere })}
    >
      {isTyping ? <CellField column={column} label={label} text={typing} onType={onType} onDone={onDone} /> : text}
    </td>
  );
};
