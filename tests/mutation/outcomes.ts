import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { schema } from '@stryker-mutator/api/core';
import { KEPT } from './stryker-options.js';

/** A change of the code and whether a test noticed. */
export interface Mutant {
  readonly file: string;
  readonly line: number;
  readonly kind: string;
  /** The code as it is, on its first line, and what was put in its place. */
  readonly code: string;
  readonly instead: string;
  readonly outcome: 'killed' | 'survived' | 'not reached';
}

/** All mutants that were tried of one folder of `src`. */
export interface FolderOutcome {
  readonly folder: string;
  /** Share of its mutants that was drawn. */
  readonly share: number;
  readonly mutants: readonly Mutant[];
}

const OUTCOMES: Partial<Record<schema.MutantStatus, Mutant['outcome']>> = {
  Killed: 'killed',
  Timeout: 'killed', // what never ends is noticed
  Survived: 'survived',
  NoCoverage: 'not reached',
};

/** What the kept runs of all folders found. */
export const keptOutcomes = (): readonly FolderOutcome[] =>
  readdirSync(KEPT)
    .filter((name) => existsSync(join(KEPT, name, 'report.json')))
    .sort()
    .map((name): FolderOutcome => {
      const { files } = JSON.parse(
        readFileSync(join(KEPT, name, 'report.json'), 'utf8'),
      ) as schema.MutationTestResult;
      const mutants = Object.entries(files).flatMap(([file, { source, mutants }]) => {
        const lines = source.split('\n');
        return mutants.flatMap(({ status, location: { start, end }, mutatorName, replacement }): Mutant[] => {
          const outcome = OUTCOMES[status];
          if (!outcome) return [];
          const till = start.line === end.line ? end.column - 1 : undefined;
          const code = lines[start.line - 1].slice(start.column - 1, till);
          return [{ file, line: start.line, kind: mutatorName, code, instead: replacement ?? '', outcome }];
        });
      });
      const [, folder, share = '1'] = /^(.*?)(?:-(0\.\d+))?$/.exec(name) as unknown as [
        string,
        string,
        string?,
      ];
      return { folder: folder.replaceAll('-', '/'), share: Number(share), mutants };
    });
