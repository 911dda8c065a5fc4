import { keepAll } from '../../src/records/home/change-records.js';
import type { RecordKind, RecordOf } from '../../src/records/read/record-kinds.js';

/** Keeps a record under an id, with a number behind it where that is taken: `lane-40-2`. @returns the id it got */
export const keepNew = async <K extends RecordKind>(
  home: string,
  kind: K,
  id: string,
  record: RecordOf[K],
): Promise<string> => (await keepAll(home, [{ kind, id, record, ifTaken: 'number' }]))[0];
