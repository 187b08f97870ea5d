import { spawnSync } from 'node:child_process';

const isThere = (command: string): boolean => spawnSync('which', [command], { stdio: 'ignore' }).status === 0;

/** Debian’s packages poppler-utils and qpdf: readers of PDF that share nothing with what writes ours. */
export const hasReaders = ['pdfinfo', 'pdffonts', 'pdftotext', 'pdftoppm', 'qpdf'].every(isThere);

const ask = (command: string, args: readonly string[]): { said: string; status: number | null } => {
  const { stdout, stderr, status } = spawnSync(command, args, { encoding: 'utf8', maxBuffer: 1 << 28 });
  return { said: `${stdout}${stderr}`, status };
};

/** Whether qpdf finds nothing wrong with the structure of a file. */
export const soundness = (file: string): string => ask('qpdf', ['--check', file]).said;

export interface PageSize {
  readonly widthPt: number;
  readonly heightPt: number;
}

/** The size of every page, as pdfinfo reads it. */
export const pageSizes = (file: string): PageSize[] =>
  [...ask('pdfinfo', ['-f', '1', '-l', '-1', file]).said.matchAll(/Page +\d+ size: +([\d.]+) x ([\d.]+) pts/g)].map(
    ([, width, height]) => ({ widthPt: Number(width), heightPt: Number(height) }),
  );

export interface Font {
  readonly name: string;
  readonly isEmbedded: boolean;
  readonly isSubset: boolean;
  /** whether words can be copied out of it */
  readonly hasUnicode: boolean;
}

/** Every font of a file. */
export const fonts = (file: string): Font[] =>
  ask('pdffonts', [file])
    .said.split('\n')
    .slice(2)
    .flatMap((line) => {
      const [, name, embedded, subset, unicode] =
        /^(\S+) .* (yes|no) +(yes|no) +(yes|no) +\d+ +\d+ *$/.exec(line) ?? [];
      return name === undefined
        ? []
        : [{ name, isEmbedded: embedded === 'yes', isSubset: subset === 'yes', hasUnicode: unicode === 'yes' }];
    });

/** A word where it stands on its page, points from the upper left corner. */
export interface Word {
  readonly text: string;
  readonly leftPt: number;
  readonly topPt: number;
  readonly rightPt: number;
  readonly bottomPt: number;
}

export interface ReadPage extends PageSize {
  readonly words: readonly Word[];
}

const plain = (text: string): string =>
  text
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&apos;', "'")
    .replaceAll('&amp;', '&');

const wordsOf = (text: string): Word[] =>
  [...text.matchAll(/<word xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)">([^<]*)<\/word>/g)].map(
    ([, left, top, right, bottom, word]) => ({
      text: plain(word ?? ''),
      leftPt: Number(left),
      topPt: Number(top),
      rightPt: Number(right),
      bottomPt: Number(bottom),
    }),
  );

/** Every page with every word on it, as poppler reads them. */
export const readPages = (file: string): ReadPage[] =>
  ask('pdftotext', ['-bbox', file, '-'])
    .said.split('<page ')
    .slice(1)
    .map((text) => {
      const [, width, height] = /^width="([\d.]+)" height="([\d.]+)"/.exec(text) ?? [];
      return { widthPt: Number(width), heightPt: Number(height), words: wordsOf(text) };
    });

export interface OutlineEntry {
  readonly title: string;
  readonly page: number;
  readonly level: number;
}

interface RawOutline {
  readonly title: string;
  readonly destpageposfrom1: number;
  readonly kids: readonly RawOutline[];
}

/** The outline as qpdf reads it, pages counted from 1. */
export const outline = (file: string): OutlineEntry[] => {
  const { outlines } = JSON.parse(ask('qpdf', ['--json', '--json-key=outlines', file]).said) as {
    outlines: RawOutline[];
  };
  const entries = (list: readonly RawOutline[], level: number): OutlineEntry[] =>
    list.flatMap(({ title, destpageposfrom1, kids }) => [
      { title, page: destpageposfrom1, level },
      ...entries(kids, level + 1),
    ]);
  return entries(outlines, 0);
};

/** A page as poppler draws it in grey: a byte a pixel, 0 is black. */
export const greyPicture = (
  file: string,
  page: number,
  dpi: number,
): { width: number; height: number; pixels: Buffer } => {
  const { stdout } = spawnSync('pdftoppm', ['-gray', '-r', `${dpi}`, '-f', `${page}`, '-l', `${page}`, file], {
    maxBuffer: 1 << 28,
  });
  const [, width, height] = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(stdout.subarray(0, 60).toString('latin1')) ?? [];
  const [w, h] = [Number(width), Number(height)];
  return { width: w, height: h, pixels: stdout.subarray(stdout.length - w * h) };
};
