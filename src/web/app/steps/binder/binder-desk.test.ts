import { expect, test } from 'vitest';
import type { Page } from '../../../../papers/pages/page-shape.ts';
import type { BinderAsked, BinderReply, BinderTold } from '../../../workers/binder-protocol.ts';
import { type BinderPort, type BinderWanted, binderDesk } from './binder-desk.ts';

const revision = { mark: 'A', standing: 'planned', on: '2027-03-01', says: 'For the yard.', boat: '00' } as const;
const wanted: BinderWanted = { of: { revision, upTo: [revision], name: 'Tern' }, paper: 'a4', papers: 'binder' };
const page: Page = { widthMm: 210, heightMm: 297, shapes: [], insets: [], links: [] };
const told: BinderTold = {
  title: 'Papers',
  given: { standing: 'as planned' },
  sizes: [page, page, page],
  bookmarks: [],
  parts: [],
  lists: [],
};

/** A desk with workers that only do what the test says for them. */
const aDesk = () => {
  const ports: {
    asked: BinderAsked[];
    isEnded: boolean;
    reply: (reply: BinderReply) => void;
    breaks: () => void;
  }[] = [];
  const saved: unknown[] = [];
  const makePort = (): BinderPort => {
    const port = {
      asked: [] as BinderAsked[],
      isEnded: false,
      reply: (_: BinderReply): void => undefined,
      breaks: (): void => undefined,
    };
    ports.push(port);
    return {
      post: (asked) => port.asked.push(asked),
      onReply: (listener) => {
        port.reply = listener;
      },
      onBreak: (listener) => {
        port.breaks = listener;
      },
      end: () => {
        port.isEnded = true;
      },
    };
  };
  const desk = binderDesk(makePort, {
    save: (file) => saved.push(file),
    brokenWords: 'It broke.',
    overtakenWords: 'Overtaken.',
  });
  return { desk, ports, saved };
};

test('what is shown stays until the next binder is there, and pages are asked for once', () => {
  const { desk, ports } = aDesk();
  desk.make(wanted);
  ports[0]?.reply({ kind: 'set', told });
  desk.want([0, 1]);
  desk.want([1, 2]);
  expect(ports[0]?.asked.flatMap((asked) => (asked.asks === 'pages' ? asked.pages : []))).toEqual([0, 1, 2]);
  ports[0]?.reply({ kind: 'pages', pages: [{ at: 1, page }] });
  expect(desk.page(1)).toBe(page);
  desk.make({ ...wanted, paper: 'letter' });
  expect(desk.state().shown?.wanted.paper).toBe('a4');
  expect(desk.page(1)).toBe(page);
  ports[1]?.reply({ kind: 'set', told });
  expect(desk.state().shown?.wanted.paper).toBe('letter');
  expect(desk.page(1)).toBeUndefined();
  expect(ports.map(({ isEnded }) => isEnded)).toEqual([true, false]);
});

test('a making that is called off ends its worker, keeps what was there and hears nothing more', () => {
  const { desk, ports } = aDesk();
  desk.make(wanted);
  ports[0]?.reply({ kind: 'set', told });
  desk.make(wanted);
  desk.stop();
  expect(ports[1]?.isEnded).toBe(true);
  expect(desk.state()).toMatchObject({ isStopped: true, shown: { title: 'Papers' } });
  ports[1]?.reply({ kind: 'set', told: { ...told, title: 'Late' } });
  expect(desk.state().shown?.title).toBe('Papers');
});

test('a file in the making is called off alone', () => {
  const { desk, ports, saved } = aDesk();
  desk.make(wanted);
  ports[0]?.reply({ kind: 'set', told });
  desk.write({ as: 'pdf' });
  ports[0]?.reply({ kind: 'writing', done: 1, of: 3 });
  expect(desk.state().writing).toEqual({ done: 1, of: 3 });
  desk.stop();
  expect(desk.state().writing).toBeUndefined();
  expect(ports[0]?.asked.at(-1)).toEqual({ asks: 'stop' });
  desk.write({ as: 'xlsx' });
  ports[0]?.reply({ kind: 'file', file: { as: 'xlsx' }, bytes: new Uint8Array() });
  expect(saved).toEqual([{ as: 'xlsx' }]);
});

test('a file that is overtaken by the next binder is told of', () => {
  const { desk, ports, saved } = aDesk();
  desk.make(wanted);
  ports[0]?.reply({ kind: 'set', told });
  desk.write({ as: 'pdf' });
  desk.make(wanted);
  ports[1]?.reply({ kind: 'set', told });
  expect(desk.state()).toMatchObject({ refused: 'Overtaken.' });
  expect(desk.state().writing).toBeUndefined();
  expect(saved).toEqual([]);
});

test('pages to print are waited for until all are there', async () => {
  const { desk, ports } = aDesk();
  desk.make(wanted);
  ports[0]?.reply({ kind: 'set', told });
  let isHere = false;
  const waiting = desk.whenHere([0, 2]).then(() => {
    isHere = true;
  });
  ports[0]?.reply({ kind: 'pages', pages: [{ at: 0, page }] });
  await Promise.resolve();
  expect(isHere).toBe(false);
  ports[0]?.reply({ kind: 'pages', pages: [{ at: 2, page }] });
  await waiting;
  expect(isHere).toBe(true);
});

test('a worker that breaks is told of, and what was shown stays', () => {
  const { desk, ports } = aDesk();
  desk.make(wanted);
  ports[0]?.reply({ kind: 'set', told });
  desk.make(wanted);
  ports[1]?.breaks();
  expect(desk.state()).toMatchObject({ refused: 'It broke.', shown: { title: 'Papers' } });
  expect(desk.state().making).toBeUndefined();
});
