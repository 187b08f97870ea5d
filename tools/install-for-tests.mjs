// Installs what only the tests need and npm does not bring: a browser and second opinions. A program of its own, so that it works while npm and the checks without a browser do.
import { findTestBrowser } from './browser.mjs';
import { installSecondOpinions } from './debian-package.mjs';

findTestBrowser();
installSecondOpinions();
