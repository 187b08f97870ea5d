import { useCallback, useState } from 'react';
import type { Refused } from '../../../core/boat-store-shape.ts';
import type { Refusal } from '../../workers/protocol.ts';
import type { Taken } from '../kept-here/take-file.ts';
import { hashOf } from '../route.ts';
import { browserKept, store } from '../store/the-store.ts';
import { words } from './boat-words.ts';

const bringTaking = () => import('../kept-here/take-file.ts');

/** A zip is kept where boats are kept. So is a boat file where that is this browser; a folder is a person’s own to put files in. */
const taken = async (file: File, kind: 'boat' | 'packed'): Promise<Taken | Refused | undefined> => {
  if (kind === 'packed') return (await bringTaking()).takeZip(store, file);
  return browserKept === undefined ? undefined : (await bringTaking()).takeText(browserKept, await file.text());
};

/** Takes in boats from files that a person opens; what cannot be kept is opened in the page, which says why. */
export const useTakenFile = (mayLeave: () => boolean, openInPage: (file: File) => void) => {
  const [refusal, setRefusal] = useState<Refusal | undefined>(undefined);
  const takeIn = useCallback(
    (file: File, kind: 'boat' | 'packed'): void => {
      if (!mayLeave()) return;
      setRefusal(undefined);
      void taken(file, kind).then((found) => {
        if (found === undefined || ('refusal' in found && kind === 'boat')) openInPage(file);
        else if ('refusal' in found) setRefusal(found.refusal);
        else {
          window.location.hash = hashOf({ page: 'boat', id: found.id, step: 'lines' });
          if (found.without.length > 0) setRefusal({ says: found.without.join(' '), whatToDo: words.keepZip });
        }
      });
    },
    [mayLeave, openInPage],
  );
  const shutTaken = useCallback(() => setRefusal(undefined), []);
  return { refusal, takeIn, shutTaken };
};
