import { defineConfig } from 'vite';
import { licences } from './tools/licences.ts';

/** The command line for Node, and its threads: those that serve phones and plan boats for them, and those that share out many boats; their libraries stay outside, in node_modules. */
export default defineConfig({
  // read in whole, it brings the words of fifty languages
  ssr: { noExternal: ['zod'] },
  plugins: [licences().page()],
  build: {
    ssr: true,
    outDir: 'dist/cli',
    target: 'node20',
    rollupOptions: {
      input: {
        main: 'src/cli/main.ts',
        'boat-worker': 'src/cli/many/boat-worker.ts',
        'phones-worker': 'src/server/phones/phones-worker.ts',
        'sheet-worker': 'src/server/phones/sheet-worker.ts',
      },
      output: { entryFileNames: '[name].js', chunkFileNames: '[name]-[hash].js' },
    },
  },
});
