import { relative } from 'node:path';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Runs the quickest files first, by what each took when it was first run: most mutants are killed by whatever reaches them. */
export class QuickestFirst extends BaseSequencer {
  private readonly took = new Map<string, number>();

  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const took = ({ project, moduleId }: TestSpecification): number => {
      const key = `${project.name}:${relative(this.ctx.config.root, moduleId)}`;
      const known = this.took.get(key) ?? this.ctx.cache.getFileTestResults(key)?.duration;
      if (known !== undefined) this.took.set(key, known);
      return known ?? 0;
    };
    return [...files].sort((a, b) => took(a) - took(b));
  }
}
