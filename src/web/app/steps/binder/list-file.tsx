import { type ReactNode, useState } from 'react';
import type { BinderFile } from '../../../workers/binder-protocol.ts';
import type { ShownBinder } from './binder-desk.ts';
import { words } from './words.ts';

/** What a choice in the list of files stands for. */
const fileOf = (chosen: string): BinderFile =>
  chosen === 'xlsx' || chosen === 'json' ? { as: chosen } : { as: 'csv', list: chosen };

/** Hands out her lists: all of them as one file, or one alone. */
export const ListFile = ({
  lists,
  onFile,
}: {
  lists: ShownBinder['lists'];
  onFile: (file: BinderFile) => void;
}): ReactNode => {
  const [chosen, setChosen] = useState('xlsx');
  return (
    <span className="binder-lists">
      <select aria-label={words.listFile} value={chosen} onChange={(event) => setChosen(event.currentTarget.value)}>
        <option value="xlsx">{words.workbook}</option>
        <option value="json">{words.json}</option>
        {lists.map(({ id, title }) => (
          <option key={id} value={id}>
            {words.csv(title)}
          </option>
        ))}
      </select>
      <button type="button" onClick={() => onFile(fileOf(chosen))}>
        {words.saveList}
      </button>
    </span>
  );
};
