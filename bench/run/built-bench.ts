import { fileURLToPath, pathToFileURL } from 'node:url';
import { build, type Plugin } from 'vite';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** What is beside a file is looked for where the file stands, though it runs from another folder. */
const whereItStands: Plugin = {
  name: 'where-it-stands',
  transform: (code, id) =>
    id.includes('/node_modules/') || !code.includes('import.meta.url')
      ? null
      : code.replaceAll('import.meta.url', JSON.stringify(pathToFileURL(id.split('?')[0] ?? id).href)),
};

/**
 * A bench as the command line is built, so that it runs what people run: what runs TypeScript as it stands wraps every function
 * to keep its name, and takes a third more time. Comes back with the path of the program.
 */
export const builtBench = async (file: string): Promise<string> => {
  await build({
    root,
    configFile: false,
    logLevel: 'warn',
    plugins: [whereItStands],
    build: {
      ssr: true,
      outDir: 'dist/bench',
      emptyOutDir: false,
      target: 'node20',
      rollupOptions: {
        input: `${root}bench/${file}`,
        output: { entryFileNames: '[name].js', codeSplitting: false },
      },
    },
  });
  return `${root}dist/bench/${file.replace(/\.ts$/, '.js')}`;
};
