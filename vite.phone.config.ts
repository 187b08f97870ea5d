import { defineConfig } from 'vite';
import { licences } from './tools/licences.ts';
import { themesCss } from './vite.config.ts';

/**
 * The phone's page, into dist/phone: a build of its own, so that a phone fetches little and the listener for phones has a
 * folder that holds nothing else. One script and one style, because what is fetched later cannot be fetched without wifi.
 */
export default defineConfig({
  root: 'src/web/phone',
  publicDir: '../public',
  plugins: [themesCss(), licences().page()],
  build: {
    outDir: '../../../dist/phone',
    emptyOutDir: true,
    target: 'es2022',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
});
