import { z } from 'zod';
import { fromKeys } from '../../../base/from-keys.js';
import { REACTION_IDS } from '../../schemas/reaction-numbers.js';
import { noLineReasonSchema, remedySchema } from '../statements/no-line.js';

const n = z.number();

export const reactionSchema = z
  .strictObject({
    outcome: z.enum(['pins', 'gutter', 'stopped']),
    ...fromKeys(REACTION_IDS, () => n),
    rollsBeforePins: z.boolean(),
  })
  .meta({ id: 'reaction' });

export const pathPointSchema = z
  .strictObject({
    timeS: n,
    distanceFt: n,
    board: n,
    speedMph: n,
    revRateRpm: n,
    headingDeg: n,
    slipMps: n,
  })
  .meta({ id: 'path-point' });

export const lineSchema = z
  .strictObject({
    laydownBoard: n,
    launchAngleDeg: n,
    arrowsBoard: n
      .nullable()
      .meta({ description: 'Board crossed 15 ft down the lane; null when the ball does not get there.' }),
    breakpointBoard: n,
    pocketBoard: n,
    reachesPocket: z.boolean(),
  })
  .meta({
    id: 'line',
    description:
      'The line a layout was rolled on: its own, re-aimed at board 17.5; it reaches the pocket when it ends on ' +
      'boards 16.5 to 18.5.',
  });

/** A way to miss to either side; outside is toward the bowler's own gutter. */
const sidesSchema = z.strictObject({ outside: n, inside: n }).meta({ id: 'sides' });

export const missRoomSchema = z
  .strictObject({ laydownBoards: sidesSchema, angleDeg: sidesSchema, arrowsBoards: sidesSchema })
  .meta({
    id: 'miss-room',
    description:
      'How far one shot may miss its line, one thing at a time, and still reach boards 16.5 to 18.5 at the pins; ' +
      'looked for up to 6 boards and 3 degrees. arrowsBoards is the miss of angle seen at 15 ft.',
  });

export const noLineSchema = z
  .strictObject({
    why: z.enum(['hooks-past', 'falls-short', 'never-arrives']),
    nearest: z.strictObject({ laydownBoard: n, launchAngleDeg: n, pinsBoard: n.nullable() }),
    says: noLineReasonSchema,
    remedies: z.array(remedySchema).meta({ description: 'What was tried and would bring it there.' }),
  })
  .meta({ description: 'Why no line reaches the pocket, what comes nearest, and what would help.' });

export const bowTieSchema = z
  .array(z.strictObject({ overIn: n, upIn: n, fromGripCentreIn: n, fromPapIn: n, spreadIn: n }))
  .length(2)
  .nullable()
  .meta({
    description:
      'The two places where the rings laid in oil cross, the one farther toward the fingers first: as arcs over and ' +
      'up from the grip centre, and as tape arcs from two marks; spreadIn is how far the rings pass each by. Null ' +
      'when the rings hardly part.',
  });
