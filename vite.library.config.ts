import { defineConfig } from 'vite';

/** The library for other programs, in one file; its libraries stay outside. Plain enough for Node and for the browser. */
export default defineConfig({
  publicDir: false,
  build: {
    lib: { entry: 'src/library/fairlead.ts', formats: ['es'], fileName: () => 'fairlead.js' },
    outDir: 'dist/library',
    target: 'es2023',
    minify: false,
    rollupOptions: { external: (id) => !id.startsWith('.') && !id.startsWith('/') && !id.startsWith('src/') },
  },
});
