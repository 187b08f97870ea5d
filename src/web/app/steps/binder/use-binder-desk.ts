import { useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../../core/plan-shape.ts';
import type { PaperName } from '../../../../papers/pages/paper-sizes.ts';
import type { BinderFile, WhichPapers } from '../../../workers/binder-protocol.ts';
import { keptChoice } from '../../kept-choice.ts';
import { useFoundWork } from '../../log/found-work.ts';
import { useLastProof } from '../../log/last-proof.ts';
import { useBoatLog } from '../../log/use-boat-log.ts';
import { routeOf } from '../../route.ts';
import { plainName, saveFile } from '../../saving/save-file.ts';
import { type BinderDesk, type BinderWanted, binderDesk, type DeskState } from './binder-desk.ts';
import { binderPort } from './binder-port.ts';
import { useWhichPapers } from './papers-choice.ts';
import { useReadRevision } from './read-choice.ts';
import { todayIso } from './today-iso.ts';
import { words } from './words.ts';

/** The paper that binders are set for. */
export const paperChoice = keptChoice<PaperName>('fairlead-paper', ['a4', 'letter']);

/** Edits come in a row: a binder is made once the hand rests. */
const restMs = 400;

const papersName = (papers: WhichPapers): string =>
  typeof papers === 'string' ? words.paperFiles[papers] : words.labelFile(papers.labels);

const nameOf = (
  { boat, mark, papers }: { boat: string; mark: string | undefined; papers: WhichPapers },
  file: BinderFile,
): string => {
  const parts = [plainName(boat), ...(mark === undefined ? [] : [mark.toLowerCase()])];
  if (file.as === 'pdf') {
    return `${[...parts, file.part === undefined ? papersName(papers) : plainName(file.part.title)].join('-')}.pdf`;
  }
  return `${[...parts, file.as === 'csv' ? file.list : words.listsFile].join('-')}.${file.as}`;
};

/** Gives a file of a binder to the browser, named by the boat, the revision and the part. */
const saveBinderFile = (wanted: BinderWanted | undefined, file: BinderFile, bytes: Uint8Array<ArrayBuffer>): void => {
  const of = wanted?.of;
  const boat = of === undefined ? '' : 'boat' in of ? of.boat.name : of.name;
  const mark = of !== undefined && 'revision' in of ? of.revision.mark : undefined;
  saveFile({ name: nameOf({ boat, mark, papers: wanted?.papers ?? 'binder' }, file), text: bytes, type: file.as });
};

/** The address by which another machine finds this boat; none where the app is served to this one alone. */
const addressOfBoat = (): { readonly boatAddress?: string } => {
  const { hostname, origin, hash } = window.location;
  const route = routeOf(hash);
  if (route.page !== 'boat' || /^(localhost|127\.|\[::1\])/.test(hostname)) return {};
  return { boatAddress: `${origin}/#/boat/${encodeURIComponent(route.id)}` };
};

/** What is wanted now: the boat as she stands, or the revision that is read. */
export const useWanted = (boat: Boat, plan: Plan): BinderWanted => {
  const paper = paperChoice.use();
  const mark = useReadRevision();
  const { name, revisions = [] } = boat;
  const revision = revisions.find((one) => one.mark === mark);
  const papers = useWhichPapers();
  const { entries } = useBoatLog(boat.name).log;
  const proof = useLastProof(boat.name);
  const work = useFoundWork(plan);
  const logKey = entries.map(({ id }) => id).join();
  // biome-ignore lint/correctness/useExhaustiveDependencies: entries never change, so that their ids tell a log from another
  const now = useMemo(
    () => ({
      of: {
        boat,
        plan: work === undefined ? plan : { ...plan, work },
        log: entries,
        ...(proof === undefined ? {} : { proof }),
        dateIso: todayIso(),
      },
      paper,
      papers,
      ...addressOfBoat(),
    }),
    [boat, plan, work, logKey, proof, paper, papers],
  );
  // biome-ignore lint/correctness/useExhaustiveDependencies: a revision is what it was, whatever happens to the boat
  const then = useMemo(
    () =>
      revision === undefined
        ? undefined
        : {
            of: { revision, upTo: revisions.slice(0, revisions.indexOf(revision) + 1), name },
            paper,
            papers,
            ...addressOfBoat(),
          },
    [revision?.mark, revision?.boat, paper, papers],
  );
  return then ?? now;
};

/** The desk on which the binder lies, made anew a moment after what it is of has changed. */
export const useBinderDesk = (wanted: BinderWanted | undefined): { desk: BinderDesk; state: DeskState } => {
  const [desk] = useState(() => {
    const made: BinderDesk = binderDesk(binderPort, {
      save: (file, bytes) => saveBinderFile(made.state().shown?.wanted, file, bytes),
      brokenWords: words.broken,
      overtakenWords: words.overtaken,
    });
    return made;
  });
  useEffect(() => {
    if (wanted === undefined) return undefined;
    const first = desk.state().shown === undefined;
    const timer = setTimeout(() => desk.make(wanted), first ? 0 : restMs);
    return () => clearTimeout(timer);
  }, [desk, wanted]);
  useEffect(() => desk.close, [desk]);
  return { desk, state: useSyncExternalStore(desk.subscribe, desk.state) };
};
