import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';
import { type ThemeName, themes } from './src/papers/drawing/themes.ts';

const themeRule = (selector: string, name: ThemeName): string => {
  const inks = Object.entries(themes[name]).filter(([ink]) => ink !== 'none');
  return `${selector}{${inks.map(([ink, colour]) => `--${ink}:${colour};`).join('')}}`;
};

/**
 * The theme table of the drawings as CSS variables, so that screen and paper cannot differ. A print has the inks of the
 * day on white, whatever light the screen is in; pages of papers have the inks they have in their file.
 */
export const themesCss = (): Plugin => ({
  name: 'fairlead-themes-css',
  resolveId: (id) => (id === 'virtual:themes.css' ? id : undefined),
  load: (id) =>
    id === 'virtual:themes.css'
      ? [
          themeRule(':root', 'day'),
          themeRule('[data-theme="dusk"]', 'dusk'),
          themeRule('[data-theme="night"]', 'night'),
          `@media print{${themeRule(':root[data-theme] .paper-inks', 'paper')}${themeRule(':root[data-theme]', 'day')}:root[data-theme]{--paper:${themes.paper.paper};--margin:${themes.paper.margin};}}`,
        ].join('\n')
      : undefined,
});

/** Asks for the typefaces with the page itself, so that the words do not move when they come. */
const earlyFonts = (): Plugin => ({
  name: 'fairlead-early-fonts',
  transformIndexHtml: {
    order: 'post',
    handler: (_, { bundle = {} }) =>
      Object.keys(bundle)
        .filter((name) => name.endsWith('.ttf'))
        .map((name) => ({
          tag: 'link',
          attrs: { rel: 'preload', as: 'font', type: 'font/ttf', href: `/${name}`, crossorigin: '' },
          injectTo: 'head' as const,
        })),
  },
});

/** Builds the app into dist/web. Nothing is inlined, so a strict content policy needs no exceptions. */
export default defineConfig({
  root: 'src/web',
  plugins: [react(), themesCss(), earlyFonts()],
  worker: { format: 'es' },
  build: {
    outDir: '../../dist/web',
    emptyOutDir: true,
    target: 'es2022',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
});
