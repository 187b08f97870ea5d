import { expect, test } from 'vitest';
import { anExample } from '../../../../tests/an-example.test-helper.ts';
import { quickPlan } from '../../../core/quick-plan.test-helper.ts';
import { chapterPages } from '../../pages/chapter-pages.ts';
import { briefBoat } from '../brief-boat.ts';
import { helmChapters } from './helm-pages.ts';
import { surveyChapter } from './survey-page.ts';

test.each(['gannet', 'sandpiper'])(
  'the page of each helm of %s has a face and a back, that for the surveyor is one',
  (name) => {
    const boat = anExample(name);
    const planned = quickPlan(boat);
    for (const paper of ['a4', 'letter'] as const) {
      for (const chapter of helmChapters(briefBoat(boat), planned))
        expect(chapterPages(chapter, paper).pages, chapter.title).toHaveLength(2);
      expect(chapterPages(surveyChapter(briefBoat(boat), planned), paper).pages).toHaveLength(1);
    }
  },
);
