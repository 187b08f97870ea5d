import fc from 'fast-check';
import { drawSeed } from './draw-seed.ts';

// run before each file of tests (vitest.config.ts)
fc.configureGlobal(drawSeed(process.env.FAIRLEAD_SEED));
