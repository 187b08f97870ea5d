import { useCallback, useState } from 'react';
import type { Refusal } from '../../../workers/protocol.ts';
import type { StartingReply } from '../../../workers/starting-protocol.ts';
import { hashOf } from '../../route.ts';
import { store } from '../../store/the-store.ts';
import { words } from './words.ts';

/** Puts a boat that was made into the folder and opens her at the step Boat, or says what keeps her from it. */
export const useKeptBoat = () => {
  const [refusal, setRefusal] = useState<Refusal | undefined>(undefined);
  const [isMaking, setIsMaking] = useState(false);
  const begin = useCallback((): void => {
    setIsMaking(true);
    setRefusal(undefined);
  }, []);
  const refuse = useCallback((why: Refusal): void => {
    setIsMaking(false);
    setRefusal(why);
  }, []);
  const take = useCallback(
    (reply: StartingReply): void => {
      if (reply.kind === 'refused') refuse(reply.refusal);
      if (reply.kind === 'fault') refuse({ says: words.broken, whatToDo: words.loadAgain, more: [reply.detail] });
      if (reply.kind !== 'made') return;
      void store.add(reply.boatText).then((added) => {
        if ('refusal' in added) refuse(added.refusal);
        else window.location.hash = hashOf({ page: 'boat', id: added.id, step: 'boat' });
      });
    },
    [refuse],
  );
  return { refusal, isMaking, begin, take };
};
