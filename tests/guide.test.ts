import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import type { GuideBlock, GuideRun } from '../src/papers/guide/guide-shape.ts';
import { readGuide } from '../src/papers/guide/read-guide.ts';
import { jobSteps } from '../src/papers/next/job-steps.ts';
import { pictureShots } from '../tools/picture-shots.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const guide = join(root, 'docs/guide');
const textOf = (file: string): string => readFileSync(join(guide, file), 'utf8');
const files = readdirSync(guide).filter((name) => name.endsWith('.md'));
const pages = new Map(files.map((file) => [file, readGuide(textOf(file))]));

/** Whatever stands in some blocks, each run once. */
const runsIn = (within: unknown): GuideRun[] => {
  if (Array.isArray(within)) return within.flatMap(runsIn);
  if (typeof within !== 'object' || within === null) return [];
  const own = 'kind' in within && ['words', 'code', 'link', 'strong', 'stress'].includes(String(within.kind));
  // reason: these kinds are those of a run
  return [...(own ? [within as GuideRun] : []), ...Object.values(within).flatMap(runsIn)];
};
const linksIn = (blocks: readonly GuideBlock[]): string[] =>
  runsIn(blocks).flatMap((run) => (run.kind === 'link' ? [run.to] : []));
const picturesIn = (blocks: readonly GuideBlock[]): string[] =>
  blocks.flatMap((block) => (block.kind === 'picture' ? [block.file] : []));
const blocksOf = (file: string): readonly GuideBlock[] => pages.get(file) ?? [];

test('every step of the job has its page, with a picture, what one does, when it is done, and a way on', () => {
  for (const [at, step] of jobSteps.entries()) {
    const blocks = blocksOf(`${step}.md`);
    expect(blocks[0], step).toMatchObject({ kind: 'heading', level: 1 });
    expect(textOf(`${step}.md`)).toContain(`*Step ${at + 1} of 10.*`);
    expect(picturesIn(blocks).length, step).toBeGreaterThan(0);
    for (const part of ['What you do', 'When it is done', 'More']) {
      expect(textOf(`${step}.md`), step).toContain(`\n## ${part}\n`);
    }
    expect(linksIn(blocks).at(-1), step).toBe(`${jobSteps[at + 1] ?? 'README'}.md`);
  }
});

test('the contents list every page, and a step’s page leads to all that stand in its row', () => {
  const contents = blocksOf('README.md');
  expect(new Set(linksIn(contents))).toEqual(new Set(files.filter((file) => file !== 'README.md')));
  const rows = contents.flatMap((block) => (block.kind === 'table' ? block.rows : []));
  expect(rows).toHaveLength(jobSteps.length + 1);
  for (const [step, detail] of rows.slice(1)) {
    const own = runsIn(step).flatMap((run) => (run.kind === 'link' ? [run.to] : []));
    const listed = runsIn(detail).flatMap((run) => (run.kind === 'link' ? [run.to] : []));
    expect(linksIn(blocksOf(own[0] ?? ''))).toEqual(expect.arrayContaining(listed));
  }
});

test('every link leads to something that is there', () => {
  for (const [file, blocks] of pages) {
    for (const to of linksIn(blocks).filter((link) => !/^https?:/.test(link))) {
      expect(existsSync(join(guide, to.replace(/#.*$/, ''))), `${file}: ${to}`).toBe(true);
    }
  }
});

test('every picture is one that the script takes, and every one it takes is shown somewhere', () => {
  const shown = new Set([...pages.values()].flatMap(picturesIn));
  const readme = readFileSync(join(root, 'README.md'), 'utf8');
  for (const [, file = ''] of readme.matchAll(/\(docs\/guide\/pictures\/([^)]+)\)/g)) shown.add(file);
  const taken = pictureShots.map(({ name }) => `${name}.png`);
  expect(new Set(taken).size).toBe(taken.length);
  expect(shown).toEqual(new Set(taken));
  expect(new Set(readdirSync(join(guide, 'pictures')))).toEqual(new Set(taken));
  for (const file of taken) {
    const { size } = statSync(join(guide, 'pictures', file));
    expect(size, file).toBeLessThan(180_000);
  }
});

test('the app can show every page: nothing is written that its reader does not know', () => {
  for (const [file, blocks] of pages) {
    expect(blocks[0], file).toMatchObject({ kind: 'heading', level: 1 });
    for (const run of runsIn(blocks)) {
      if (run.kind === 'words') expect(run.text, file).not.toMatch(/[*`|]|\]\(|!\[|<[a-z]|^#|^ *- /);
    }
  }
});
