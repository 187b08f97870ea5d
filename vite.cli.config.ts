import { defineConfig } from 'vite';

/** The command line for Node, and the thread that plans boats for phones; their libraries stay outside, in node_modules. */
export default defineConfig({
  build: {
    ssr: true,
    outDir: 'dist/cli',
    target: 'node20',
    rollupOptions: {
      input: { main: 'src/cli/main.ts', 'sheet-worker': 'src/server/phones/sheet-worker.ts' },
      output: { entryFileNames: '[name].js', chunkFileNames: '[name]-[hash].js' },
    },
  },
});
