import type { ReactNode } from 'react';
import type { Sheet } from '../../../../core/boat/sheet.ts';
import { writeSheet } from '../../../../core/boat/write-sheet.ts';
import { saveFile } from '../../saving/save-file.ts';
import { keepSheet, keepSheetFile, useOwnSheets } from './use-own-sheets.ts';
import { words } from './words.ts';

/** Gives the file of a sheet to the browser to be put where the person keeps such things. */
const download = (sheet: Sheet): void =>
  saveFile({ name: `${sheet.id}.sheet.json`, text: writeSheet(sheet), type: 'json' });

/** Keeps the sheet of a unit for the next boat, or saves it as a file. */
export const KeepSheet = ({ sheet }: { sheet: Sheet }): ReactNode => (
  <>
    <button type="button" className="press-link" onClick={() => void keepSheet(sheet)}>
      {words.keepSheet}
    </button>
    <button type="button" className="press-link" onClick={() => download(sheet)}>
      {words.saveSheet}
    </button>
  </>
);

/** Opens the file of a sheet, to have it among the own ones; says what is wrong with one that cannot be read. */
export const OpenSheet = (): ReactNode => {
  const { trouble } = useOwnSheets();
  return (
    <div className="kit-open">
      <label className="press-link">
        {words.openSheet}
        <input
          type="file"
          className="unseen"
          accept=".json,application/json"
          onChange={({ target }) => {
            const [file] = target.files ?? [];
            if (file !== undefined) void file.text().then(keepSheetFile);
            target.value = '';
          }}
        />
      </label>
      {trouble === undefined ? null : <p role="alert">{trouble}</p>}
    </div>
  );
};
