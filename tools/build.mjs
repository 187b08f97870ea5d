// Builds what is stale, as a program of its own, so that other checks run beside it.
import { build } from './ready.mjs';

build();
