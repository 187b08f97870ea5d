import { defineConfig } from 'vite';

/** The command line as one file for Node; its libraries stay outside, from node_modules. */
export default defineConfig({
  build: {
    ssr: 'src/cli/main.ts',
    outDir: 'dist/cli',
    target: 'node20',
    rollupOptions: { output: { entryFileNames: 'main.js' } },
  },
});
