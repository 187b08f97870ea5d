import { readdirSync, readFileSync } from 'node:fs';
import type { Plugin } from 'vite';
import { byCodeUnit } from '../src/core/units/by-code-unit.ts';

interface PackageJson {
  readonly name: string;
  readonly version: string;
  readonly license?: string;
}

/** The folder of the library that a module is of; undefined for our own. */
const libraryOf = (module: string): string | undefined =>
  /^\0?(.*[\\/]node_modules[\\/](?:@[^\\/]+[\\/])?[^\\/]+)[\\/]/.exec(module)?.[1];

/** What a library asks to be handed on with it, as it lies in its folder. */
const chapterOf = (folder: string): string => {
  const {
    name,
    version,
    license = 'no licence named',
  }: PackageJson = JSON.parse(readFileSync(`${folder}/package.json`, 'utf8'));
  const texts = readdirSync(folder)
    .filter((file) => /^licen[cs]e/i.test(file))
    .sort()
    .map((file) => readFileSync(`${folder}/${file}`, 'utf8').trim());
  const text = texts.length === 0 ? 'It comes without the text of its licence.' : texts.join('\n\n');
  return `## ${name} ${version}\n\n${license}\n\n${text}\n`;
};

/**
 * Writes licences.md beside what is built: every library that is in it, with its licence, because nearly all of them may be
 * handed on only with theirs. Workers are built apart; the plugin that sees them only tells the one it was taken from.
 */
export const licences = (): { readonly page: () => Plugin; readonly workers: () => Plugin } => {
  const folders = new Set<string>();
  const see = (bundle: Readonly<Record<string, object>>): void => {
    for (const chunk of Object.values(bundle)) {
      if (!('moduleIds' in chunk) || !Array.isArray(chunk.moduleIds)) continue;
      for (const module of chunk.moduleIds) {
        const folder = libraryOf(String(module));
        if (folder !== undefined) folders.add(folder);
      }
    }
  };
  return {
    workers: () => ({ name: 'fairlead-licences-of-workers', generateBundle: (_, bundle) => see(bundle) }),
    page: () => ({
      name: 'fairlead-licences',
      generateBundle(_, bundle) {
        see(bundle);
        const chapters = [...folders].map(chapterOf).sort(byCodeUnit);
        if (chapters.length === 0) return;
        const source = ['# Libraries in this program\n', ...chapters].join('\n');
        this.emitFile({ type: 'asset', fileName: 'licences.md', source });
      },
    }),
  };
};
