import type { ReactNode } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { Revision } from '../../../../core/boat/revision.ts';
import type { BinderAsked, BinderReply } from '../../../workers/binder-protocol.ts';
import { useOwnWorker } from '../../use-own-worker.ts';
import { useWords } from '../../words/units.ts';
import { words } from './words.ts';

interface Since {
  readonly says: string;
}

const make = (): Worker =>
  new Worker(new URL('../../../workers/binder-worker.ts', import.meta.url), { type: 'module' });

const after = (was: Since, reply: BinderReply): Since =>
  reply.kind === 'since' || reply.kind === 'refused' ? { says: reply.says } : was;

const failed = (): Since => ({ says: words.broken });

/** What changed since a revision was given out, in words, when somebody asks. */
export const SinceRevision = ({ boat, revision }: { boat: Boat; revision: Revision }): ReactNode => {
  const say = useWords();
  const { found, ask, stop } = useOwnWorker<BinderAsked, BinderReply, Since>(boat, { make, after, failed });
  return (
    <>
      <button
        type="button"
        className="press-link"
        aria-expanded={found !== undefined}
        onClick={() =>
          found === undefined
            ? ask({ asks: 'since', revision, boat }, { says: words.comparing })
            : stop(() => undefined)
        }
      >
        {words.since(revision.mark)}
      </button>
      <p role="status" className="binder-since">
        {found === undefined ? null : say(found.says)}
      </p>
    </>
  );
};
