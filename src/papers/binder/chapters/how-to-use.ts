import type { Chapter } from '../binder-shape.ts';

/** What is in the binder, for whom, and how it is kept true. */
export const howToUseChapter = (): Chapter => ({
  id: 'how-to-use',
  title: 'How to use this binder',
  blocks: [
    {
      kind: 'points',
      points: [
        'To fit her out: drawings first, then the cable list, the pairs and the fuses. Tick as you go.',
        'To prove her: the tests, at the dock and then at sea. Write what you found beside what is expected, with the day and your name.',
        'To find a fault: “What goes dark” says what hangs on what; the index finds every sheet on which a device or a place is named.',
        'To change something: write it into the change log on the day you do it, and on the sheet it concerns.',
        'A cable has one label for life. It is the same at both ends, in every list and on every drawing.',
        'Tables call a device or a place by as much of its name as tells it from the others. The index gives the whole name.',
        'Lengths are along the cable, in metres. “Longest” has every doubt against it: cable is bought for that.',
        'Print at 100 %, and check the ruler on the cover. Every sheet can be copied in black and white.',
        'Keep one set on paper aboard, and the file on two sticks, one of them ashore. Passwords are on neither.',
      ],
    },
    {
      kind: 'words',
      text: 'What stands here was computed from what was measured and entered. It is a plan, not an approval: local rules, the manuals of the makers and a licensed person come before it.',
    },
  ],
});
