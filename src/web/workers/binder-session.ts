import { boatOfRevision } from '../../core/as-fitted/boat-of-revision.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { UserError } from '../../core/boat/user-error.ts';
import { type BoatLog, boatLog, emptyLog } from '../../core/log/boat-log.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { ProofReport } from '../../core/proof/compare/proof-report.ts';
import { quoteOf } from '../../core/quote/quote-of.ts';
import { binderOf } from '../../papers/binder/binder.ts';
import { briefBoat } from '../../papers/binder/brief-boat.ts';
import { quoteChapter } from '../../papers/binder/chapters/quote.ts';
import { type GivenOut, givenOutNow, givenOutThen } from '../../papers/binder/given-out.ts';
import { labelSheets, labelTapes, usualSheet } from '../../papers/labels/label-geometry.ts';
import { labelsTogether, setLabels } from '../../papers/labels/set-labels.ts';
import { boatChangeWords } from '../../papers/lists/boat-change-words.ts';
import { planLists } from '../../papers/lists/plan-lists.ts';
import type { SetBinder } from '../../papers/pages/page-shape.ts';
import type { PaperName } from '../../papers/pages/paper-sizes.ts';
import { partOfBinder, partsOf } from '../../papers/pages/parts-of.ts';
import { setAlone, setBinder } from '../../papers/pages/set-binder.ts';
import { type FaceBytes, type MakePdf, writePdf } from '../../papers/pdf/write-pdf.ts';
import { tableCsv } from '../../papers/table/table-csv.ts';
import { tablesJson } from '../../papers/table/tables-json.ts';
import { workbook } from '../../papers/table/workbook.ts';
import { setTemplates } from '../../papers/templates/set-templates.ts';
import type {
  BinderAsked,
  BinderFile,
  BinderOrder,
  BinderReply,
  BinderSubject,
  WhichPapers,
} from './binder-protocol.ts';
import { words } from './words.ts';

/** What a session needs: a clock, a breath that lets other asks in, somebody to answer to, and what only some asks need. */
export interface BinderTools {
  readonly nowMs: () => number;
  readonly pause: () => Promise<void>;
  readonly post: (reply: BinderReply) => void;
  readonly planned: (boat: Boat) => { readonly boat: Boat; readonly plan: Plan };
  readonly bringPdf: () => Promise<{ readonly makePdf: MakePdf; readonly faces: FaceBytes }>;
}

/** Longest stretch without a breath. */
const sliceMs = 60;

/** As many things as fit a margin that is read from top to bottom. */
const mostChanges = 40;

interface Made {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly log: BoatLog;
  readonly set: SetBinder;
}

const joined = (chunks: readonly Uint8Array[]): Uint8Array<ArrayBuffer> => {
  const all = new Uint8Array(chunks.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const chunk of chunks) {
    all.set(chunk, at);
    at += chunk.length;
  }
  return all;
};

const bytesOfText = (text: string): Uint8Array<ArrayBuffer> => new TextEncoder().encode(text);

/** What papers are made of, and what each sheet of them says of itself. */
interface Subject {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly given: GivenOut;
  readonly log: BoatLog;
  readonly proof?: ProofReport;
}

const subjectOf = (of: BinderSubject, planned: BinderTools['planned']): Subject => {
  if (!('revision' in of)) {
    const log = of.log === undefined ? emptyLog : boatLog(of.log);
    const { boat, plan, proof, dateIso } = of;
    return { boat, plan, log, ...(proof === undefined ? {} : { proof }), given: givenOutNow(boat, dateIso) };
  }
  return { ...planned(boatOfRevision(of.revision, of.upTo)), log: emptyLog, given: givenOutThen(of.revision) };
};

const listFile = ({ boat, plan, log }: Made, file: Exclude<BinderFile, { as: 'pdf' }>): Uint8Array<ArrayBuffer> => {
  const lists = planLists(boat, plan, log);
  switch (file.as) {
    case 'xlsx':
      return joined([workbook(lists)]);
    case 'json':
      return bytesOfText(tablesJson(lists));
    case 'csv':
      return bytesOfText(lists.flatMap((list) => (list.id === file.list ? [tableCsv(list)] : [])).join(''));
  }
};

/** Papers that are no binder: the quote to sign, templates to cut by, or labels on sheets or on tape. */
const loosePapers = (
  { boat, plan, given: { dateIso } }: Subject,
  {
    papers,
    paper,
    boatAddress,
  }: { papers: Exclude<WhichPapers, 'binder'>; paper: PaperName; boatAddress?: string | undefined },
): SetBinder => {
  const day = dateIso === undefined ? {} : { dateIso };
  if (papers === 'templates') return setTemplates({ boat, plan, paper, ...day });
  if (papers !== 'quote') {
    const geometry = [...labelSheets, ...labelTapes].find(({ id }) => id === papers.labels) ?? usualSheet(paper);
    const address = boatAddress === undefined ? {} : { boatAddress };
    return labelsTogether(setLabels({ boat, plan, paper, geometry, ...day, ...address }), geometry);
  }
  const chapters = [quoteChapter(briefBoat(boat), plan, quoteOf({ boat, plan }))];
  return setAlone({ boat: boat.name, ...day, chapters }, paper);
};

/** Walks through steps with breaths between them; undefined where it was called off. */
const walked = async <Step, End>(
  steps: Generator<Step, End>,
  { nowMs, pause }: BinderTools,
  { say, isOff }: { say: (step: Step) => void; isOff: () => boolean },
): Promise<End | undefined> => {
  let breathMs = nowMs();
  let step = steps.next();
  while (step.done !== true) {
    if (nowMs() - breathMs >= sliceMs) {
      say(step.value);
      await pause();
      if (isOff()) return undefined;
      breathMs = nowMs();
    }
    step = steps.next();
  }
  return step.value;
};

/**
 * The worker’s side of a binder: sets it in pages, hands pages out by number, and makes files of it. What cannot be done is
 * refused in words.
 */
export const binderSession = (tools: BinderTools): ((asked: BinderAsked) => Promise<void>) => {
  const { post } = tools;
  let made: Made | undefined;
  let latest = 0;

  const binderSet = ({ given, ...of }: Subject, paper: PaperName): Promise<SetBinder | undefined> =>
    walked(setBinder(binderOf({ ...of, ...given, paper }), paper), tools, {
      say: (progress) => post({ kind: 'setting', progress }),
      isOff: () => false,
    });

  const set = async ({ of, paper, papers, boatAddress }: BinderOrder): Promise<void> => {
    const subject = subjectOf(of, tools.planned);
    const done =
      papers === 'binder' ? await binderSet(subject, paper) : loosePapers(subject, { papers, paper, boatAddress });
    if (done === undefined) return;
    made = { boat: subject.boat, plan: subject.plan, log: subject.log, set: done };
    const sizes = done.pages.map(({ widthMm, heightMm }) => ({ widthMm, heightMm }));
    const lists = planLists(subject.boat, subject.plan).map(({ id, title }) => ({ id, title }));
    const { title, bookmarks } = done;
    post({ kind: 'set', told: { title, given: subject.given, sizes, bookmarks, parts: partsOf(done), lists } });
  };

  const writeFile = async ({ set: whole, ...rest }: Made, file: BinderFile, turn: number): Promise<void> => {
    if (file.as !== 'pdf') {
      post({ kind: 'file', file, bytes: listFile({ set: whole, ...rest }, file) });
      return;
    }
    const part = file.part === undefined ? whole : partOfBinder(whole, file.part);
    const of = part.pages.length;
    post({ kind: 'writing', done: 0, of });
    const pdf = await tools.bringPdf();
    const isOff = (): boolean => turn !== latest;
    const packed = await walked(writePdf(part, pdf), tools, {
      say: (done) => post({ kind: 'writing', done, of }),
      isOff,
    });
    const bytes = packed === undefined ? undefined : joined(await packed);
    if (bytes !== undefined && !isOff()) post({ kind: 'file', file, bytes });
  };

  const answer = async (asked: BinderAsked): Promise<void> => {
    switch (asked.asks) {
      case 'set':
        return set(asked);
      case 'pages': {
        const pages = asked.pages.flatMap((at) => {
          const page = made?.set.pages[at];
          return page === undefined ? [] : [{ at, page }];
        });
        post({ kind: 'pages', pages });
        return;
      }
      case 'file':
        latest += 1;
        return made === undefined ? undefined : writeFile(made, asked.file, latest);
      case 'stop':
        latest += 1;
        return;
      case 'since': {
        const says = boatChangeWords({ before: boatOfRevision(asked.revision), after: asked.boat }, mostChanges);
        post({ kind: 'since', says: says === '' ? words.nothingChanged(asked.revision.mark) : says });
        return;
      }
    }
  };

  return async (asked) => {
    try {
      await answer(asked);
    } catch (error) {
      if (error instanceof UserError) post({ kind: 'refused', says: `${error.says} ${error.whatToDo}` });
      else post({ kind: 'refused', says: words.faultInBinder(error instanceof Error ? error.message : String(error)) });
    }
  };
};
