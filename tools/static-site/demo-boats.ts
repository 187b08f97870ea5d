import type { Plugin } from 'vite';
import { demoFiles } from '../../src/node/demo-files.ts';

/** Lays the demo boats beside the page, so that it has them without a server. */
export const demoBoats = (examples: string): Plugin => ({
  name: 'fairlead-demo-boats',
  apply: 'build',
  async generateBundle() {
    for (const [name, source] of await demoFiles(examples)) {
      this.emitFile({ type: 'asset', fileName: `demo-boats/${name}`, source });
    }
  },
});
