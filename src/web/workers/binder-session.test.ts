import { describe, expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { applyEdit } from '../../core/boat/history.ts';
import { startHistory } from '../../core/boat/start-history.ts';
import { plan } from '../../core/plan.ts';
import { startWatch } from '../../core/proof/compare/watch.ts';
import type { PdfFile } from '../../papers/pdf/pdf-document.ts';
import type { BinderAsked, BinderReply } from './binder-protocol.ts';
import { binderSession } from './binder-session.ts';

const { boat } = aBoat();
const planned = (of: typeof boat) => ({ boat: of, plan: plan(of, new Map()) });
const now = { ...planned(boat), dateIso: '2027-03-01' };
const given = { mark: 'A', standing: 'planned', on: '2027-02-01', says: 'For the yard.' } as const;

/** A session whose clock makes every step long enough for a breath, and what it said. */
const aSession = (pause: () => Promise<void> = async () => undefined) => {
  const said: BinderReply[] = [];
  let ms = 0;
  const hear = binderSession({
    nowMs: () => {
      ms += 100;
      return ms;
    },
    pause,
    post: (reply) => said.push(reply),
    planned,
    bringPdf: () => Promise.reject(new Error('no library here')),
  });
  return { hear, said };
};

const told = (said: readonly BinderReply[]) => {
  const last = said.findLast(({ kind }) => kind === 'set');
  return last?.kind === 'set' ? last.told : undefined;
};

describe('a binder in a worker', () => {
  test('says chapter by chapter how far it is, then all but the pages', async () => {
    const { hear, said } = aSession();
    await hear({ asks: 'set', of: now, paper: 'a4', papers: 'binder' });
    const steps = said.flatMap((reply) => (reply.kind === 'setting' ? [reply.progress] : []));
    expect(steps.length).toBeGreaterThan(5);
    expect(steps.map(({ done }) => done)).toEqual(steps.map((_, at) => at + 1));
    const made = told(said);
    expect(made?.title).toBe(`${boat.name}: papers of her navigation electronics, as planned`);
    expect(made?.sizes.length).toBe(steps.at(-1)?.pages);
    expect(made?.parts.map(({ title }) => title)).toContain('Cable list');
    expect(made?.lists.map(({ id }) => id)).toContain('cables');
  });

  test('bears what the last recording came to, where there was one', async () => {
    const { hear, said } = aSession();
    const proof = startWatch(planned(boat)).report();
    const partsOf = async (of: typeof now & { proof?: typeof proof }): Promise<string[]> => {
      await hear({ asks: 'set', of, paper: 'a4', papers: 'binder' });
      return (told(said)?.parts ?? []).map(({ title }) => title);
    };
    const before = await partsOf(now);
    const after = await partsOf({ ...now, proof });
    expect(after.filter((title) => !before.includes(title))).toEqual(['Proof: the bus beside the plan']);
  });

  test('hands out pages by number, and none that are not there', async () => {
    const { hear, said } = aSession();
    await hear({ asks: 'set', of: now, paper: 'letter', papers: 'binder' });
    await hear({ asks: 'pages', pages: [0, 99_999] });
    const last = said.at(-1);
    expect(last?.kind === 'pages' && last.pages.map(({ at, page }) => [at, page.widthMm])).toEqual([[0, 215.9]]);
  });

  test('makes files of her lists', async () => {
    const { hear, said } = aSession();
    await hear({ asks: 'set', of: now, paper: 'a4', papers: 'binder' });
    const bytesOf = async (asked: Extract<BinderAsked, { asks: 'file' }>) => {
      await hear(asked);
      const last = said.at(-1);
      return last?.kind === 'file' ? last.bytes : new Uint8Array();
    };
    const text = async (asked: Extract<BinderAsked, { asks: 'file' }>) =>
      new TextDecoder().decode(await bytesOf(asked));
    expect(await text({ asks: 'file', file: { as: 'csv', list: 'cables' } })).toMatch(/^label,kind,from,to/);
    expect(Object.keys(JSON.parse(await text({ asks: 'file', file: { as: 'json' } })))).not.toHaveLength(0);
    const workbook = await bytesOf({ asks: 'file', file: { as: 'xlsx' } });
    expect([...workbook.slice(0, 2)]).toEqual([0x50, 0x4b]);
  });

  test('fills in what was found aboard, as the log has it', async () => {
    const { hear, said } = aSession();
    const entry = { kind: 'reading', id: 'reading01', at: '2027-03-01T09:00:00Z', by: 'A', value: 60 } as const;
    const log = [{ ...entry, test: 'dock/data-ohm:nav:end-1' }];
    await hear({ asks: 'set', of: { ...now, log }, paper: 'a4', papers: 'binder' });
    await hear({ asks: 'file', file: { as: 'csv', list: 'tests' } });
    const last = said.at(-1);
    const csv = last?.kind === 'file' ? new TextDecoder().decode(last.bytes) : '';
    expect(csv).toMatch(/✓ 60 Ω, right"?,2027-03-01,A/);
  });

  test('makes the papers of a revision from the boat as she stood, under its mark and day', async () => {
    const first = applyEdit(startHistory(boat), 'issue-revision', given);
    const [revision] = first.boat.revisions ?? [];
    if (revision === undefined) throw new Error('nothing was given out');
    const { hear, said } = aSession();
    await hear({ asks: 'set', of: { revision, upTo: [revision], name: boat.name }, paper: 'a4', papers: 'binder' });
    await hear({ asks: 'pages', pages: [0] });
    expect(JSON.stringify(said.at(-1))).toContain('2027-02-01');
    const [unit] = boat.kit;
    const later = applyEdit(first, 'name-unit', { unit: unit?.id ?? '', name: 'another name' });
    await hear({ asks: 'since', revision, boat: later.boat });
    expect(said.at(-1)).toMatchObject({ kind: 'since', says: expect.stringMatching(/name/i) });
  });

  test('sets labels and the quote as papers by themselves', async () => {
    const { hear, said } = aSession();
    await hear({ asks: 'set', of: now, paper: 'a4', papers: { labels: 'tape-12' } });
    const labels = told(said);
    expect(labels?.parts.map(({ title }) => title).at(-1)).toBe('tape, 12 mm');
    expect(Math.min(...(labels?.sizes ?? []).map(({ heightMm }) => heightMm))).toBe(12);
    await hear({ asks: 'set', of: now, paper: 'letter', papers: 'quote' });
    expect(told(said)?.parts.map(({ title }) => title)).toEqual([`New electronics for ${boat.name}`]);
    await hear({ asks: 'set', of: now, paper: 'a4', papers: 'templates' });
    expect(told(said)?.title).toBe(`${boat.name}: templates to cut by`);
    expect(told(said)?.sizes.length).toBeGreaterThan(0);
  });

  test('refuses in words what cannot be read or made', async () => {
    const { hear, said } = aSession();
    await hear({
      asks: 'set',
      of: { revision: { ...given, boat: '00ff' }, upTo: [], name: boat.name },
      paper: 'a4',
      papers: 'binder',
    });
    expect(said).toEqual([{ kind: 'refused', says: expect.stringMatching(/cannot be unpacked/) }]);
    await hear({ asks: 'set', of: now, paper: 'a4', papers: 'binder' });
    await hear({ asks: 'file', file: { as: 'pdf' } });
    expect(said.at(-1)).toEqual({ kind: 'refused', says: expect.stringMatching(/no library here/) });
  });
});

/** A library that takes whatever is drawn and packs nothing. */
const aLibrary = (): PdfFile => {
  const taken: unknown = new Proxy(() => undefined, {
    get: (_, name) => (name === 'then' ? undefined : name === Symbol.toPrimitive ? () => 1 : taken),
    apply: () => taken,
    set: () => true,
  });
  return taken as PdfFile;
};

test('a PDF that is called off is not handed out', async () => {
  const said: BinderReply[] = [];
  let ms = 0;
  const stopping: { hear?: (asked: BinderAsked) => Promise<void> } = {};
  const hear = binderSession({
    nowMs: () => {
      ms += 100;
      return ms;
    },
    pause: async () => {
      if (said.some((reply) => reply.kind === 'writing' && reply.done === 2)) await stopping.hear?.({ asks: 'stop' });
    },
    post: (reply) => said.push(reply),
    planned,
    bringPdf: async () => ({ makePdf: aLibrary, faces: {} }),
  });
  stopping.hear = hear;
  await hear({ asks: 'set', of: now, paper: 'a4', papers: 'binder' });
  await hear({ asks: 'file', file: { as: 'pdf' } });
  expect(said.at(-1)).toMatchObject({ kind: 'writing', done: 2 });
});
