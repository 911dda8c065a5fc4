import type { SheetAnswer } from '../../records/answers/sheet-answer.js';
import { USUAL_GRIT } from '../../records/schemas/ball.js';
import { type Block, rowsOf } from './blocks.js';

const LINE = '__________________';

/** What the shop fills in: surface, whose ball, who did what and when. */
export const signBlock = ({ ball, bowler }: SheetAnswer): Block => ({
  heading: 'Surface and signature',
  parts: [
    rowsOf(
      [],
      [
        ['surface, as sold', `${ball.surfaceGrit ?? `${USUAL_GRIT} (assumed)`} grit`],
        ['surface wanted', LINE],
        ...(bowler.thumbHole ? [['thumb bevel', LINE]] : []),
        ['serial number', LINE],
        ['order number', LINE],
        ['drilled by', LINE],
        ['checked by', LINE],
        ['date', LINE],
      ],
    ),
  ],
});
