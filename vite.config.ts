import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';
import { type ThemeName, themes } from './src/papers/drawing/themes.ts';

const themeRule = (selector: string, name: ThemeName): string => {
  const inks = Object.entries(themes[name]).filter(([ink]) => ink !== 'none');
  return `${selector}{${inks.map(([ink, colour]) => `--${ink}:${colour};`).join('')}}`;
};

/**
 * The theme table of the drawings as CSS variables, so that screen and paper cannot differ. A print has the inks of the
 * day on white, whatever light the screen is in.
 */
const themesCss = (): Plugin => ({
  name: 'fairlead-themes-css',
  resolveId: (id) => (id === 'virtual:themes.css' ? id : undefined),
  load: (id) =>
    id === 'virtual:themes.css'
      ? [
          themeRule(':root', 'day'),
          themeRule('[data-theme="dusk"]', 'dusk'),
          themeRule('[data-theme="night"]', 'night'),
          `@media print{${themeRule(':root[data-theme]', 'day')}:root[data-theme]{--paper:${themes.paper.paper};--margin:${themes.paper.margin};}}`,
        ].join('\n')
      : undefined,
});

/** Builds the app into dist/web. Nothing is inlined, so a strict content policy needs no exceptions. */
export default defineConfig({
  root: 'src/web',
  plugins: [react(), themesCss()],
  worker: { format: 'es' },
  build: {
    outDir: '../../dist/web',
    emptyOutDir: true,
    target: 'es2022',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
});
