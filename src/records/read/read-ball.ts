import { type Ball, ballSchemaFor } from '../schemas/ball.js';
import { readCore } from './read-core.js';
import { fileBeside } from './read-file.js';
import { readRecord } from './read-record.js';

/**
 * Reads a ball and, if it names one, its core file with the meshes that one names.
 *
 * @param path  as the person typed it; it appears in the error
 * @throws {InputError} as `readRecord` does, of whichever file is at fault
 */
export function readBall(path: string): Ball {
  const ball = readRecord(ballSchemaFor, path);
  return 'core' in ball ? { ...ball, coreFile: readCore(fileBeside(path, ball.core)) } : ball;
}
