import type { GuideBlock, GuideRun } from '../../../papers/guide/guide-shape.ts';
import { readGuide } from '../../../papers/guide/read-guide.ts';

/** The pages as they stand in docs/guide, each brought when it is opened; they are built in, so that they are there offline. */
const texts = import.meta.glob<string>('../../../../docs/guide/*.md', { query: '?raw', import: 'default' });
const pictures = import.meta.glob<string>('../../../../docs/guide/pictures/*.png', {
  query: '?url',
  import: 'default',
  eager: true,
});

/** The page that lists all others. */
export const contentsPage = 'README';

/** A page of the guide in blocks; undefined where there is none of that name. */
export const guidePage = async (name: string): Promise<readonly GuideBlock[] | undefined> => {
  const text = await texts[`../../../../docs/guide/${name}.md`]?.();
  return text === undefined ? undefined : readGuide(text);
};

/** The address of a picture of the guide. */
export const guidePicture = (file: string): string | undefined => pictures[`../../../../docs/guide/pictures/${file}`];

/** The page a link of the guide leads to; undefined where it leads out of the guide, which is not there offline. */
export const linkedPage = (to: string): string | undefined => /^([a-z-]+|README)\.md(?:#.*)?$/.exec(to)?.[1];

const linksIn = (runs: readonly GuideRun[]): string[] =>
  runs.flatMap((run) => {
    if (run.kind === 'link') return [linkedPage(run.to) ?? ''];
    return 'runs' in run ? linksIn(run.runs) : [];
  });

/** Every page in the order of the contents, each once, as it is printed. */
export const wholeGuide = async (): Promise<readonly (readonly GuideBlock[])[]> => {
  const contents = (await guidePage(contentsPage)) ?? [];
  const rows = contents.flatMap((block) => (block.kind === 'table' ? block.rows.flat() : []));
  const names = [contentsPage, ...new Set(rows.flatMap(linksIn))];
  const pages = await Promise.all(names.map(guidePage));
  return pages.filter((page) => page !== undefined);
};
