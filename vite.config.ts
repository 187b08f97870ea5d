import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin, type Rolldown } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { type ThemeName, themes } from './src/papers/drawing/themes.ts';
import { licences } from './tools/licences.ts';
import { demoBoats } from './tools/static-site/demo-boats.ts';
import { icons } from './tools/static-site/icons.ts';
import { withoutJsonSchema } from './tools/static-site/without-json-schema.ts';

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
          attrs: { rel: 'preload', as: 'font', type: 'font/ttf', href: `./${name}`, crossorigin: '' },
          injectTo: 'head' as const,
        })),
  },
});

/**
 * The page’s own script stands before those that hold it up: a browser that has read a policy in the page looks no further
 * ahead, and would ask for it only after they have come and run.
 */
const ownScriptFirst = (): Plugin => ({
  name: 'fairlead-own-script-first',
  transformIndexHtml: {
    order: 'post',
    handler: (html) => {
      const [own = ''] = /\s*<script type="module"[^>]*><\/script>/.exec(html) ?? [];
      return html.replace(own, '').replace(/\s*<script src="[^"]*first-worker\.js"/, `${own}$&`);
    },
  },
});

/** Tells first-worker.js which file is the planning worker: it is the longest part of the way to the first picture. */
const earlyWorker = (): Plugin => ({
  name: 'fairlead-early-worker',
  transformIndexHtml: {
    order: 'post',
    handler: (html, { bundle = {} }) => {
      const worker = Object.keys(bundle).find((name) => /plan-worker-[^/]*\.js$/.test(name));
      return worker === undefined ? html : html.replace(/(?<=first-worker\.js")/, ` data-worker="./${worker}"`);
    },
  },
});

const { paper } = themes.day;
const { page: licencesOfAll, workers: licencesOfWorkers } = licences();

/**
 * What stands before the first picture comes as one file: each further one is asked for only when the one before it is
 * read, and compresses worse alone.
 */
const inOneFile: Rolldown.OutputOptions = { codeSplitting: { groups: [{ name: 'first', tags: ['$initial'] }] } };

/** The worker that keeps the page for use without a network, and what an installed app is called. The page registers it. */
const keptPage = (): Plugin[] =>
  VitePWA({
    registerType: 'prompt',
    // a page of our own server must not register it
    injectRegister: false,
    // they are among the files already
    includeManifestIcons: false,
    manifest: {
      id: './',
      name: 'Fairlead',
      short_name: 'Fairlead',
      description: 'Plan the whole replacement of a boat’s navigation electronics.',
      start_url: './',
      scope: './',
      display: 'standalone',
      background_color: paper,
      theme_color: paper,
      icons: [
        { src: 'fairlead.svg', sizes: 'any', type: 'image/svg+xml' },
        { src: 'icon-192.png', sizes: '192x192', type: 'image/png' },
        { src: 'icon-512.png', sizes: '512x512', type: 'image/png' },
        { src: 'icon-edges-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
      ],
    },
    workbox: {
      // whatever the page may ever ask for: planning, papers and demo boats included
      globPatterns: ['**/*'],
      globIgnores: ['sw.js'],
      maximumFileSizeToCacheInBytes: 8_000_000,
      dontCacheBustURLsMatching: /^assets\//,
      navigateFallback: 'index.html',
      cleanupOutdatedCaches: true,
      inlineWorkboxRuntime: true,
      sourcemap: false,
    },
  });

/**
 * Builds the app into dist/web, as any host of files can hand it out under any path; our own server does too. Nothing is
 * inlined, so a strict content policy needs no exceptions.
 */
export default defineConfig({
  root: 'src/web',
  base: './',
  plugins: [
    react(),
    withoutJsonSchema(),
    themesCss(),
    earlyFonts(),
    earlyWorker(),
    ownScriptFirst(),
    icons({ sign: 'src/web/public/fairlead.svg', ground: paper }),
    demoBoats('examples'),
    licencesOfAll(),
    keptPage(),
  ],
  worker: {
    format: 'es',
    plugins: () => [withoutJsonSchema(), licencesOfWorkers()],
    rolldownOptions: { output: inOneFile },
  },
  build: {
    outDir: '../../dist/web',
    emptyOutDir: true,
    target: 'es2022',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    rolldownOptions: { output: inOneFile },
  },
});
