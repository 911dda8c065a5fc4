import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));

/** A program in a docstring or on a page, and what its comments say it prints. */
interface Example {
  readonly name: string;
  readonly code: string;
  readonly prints: readonly string[];
}

/** What a line of an example is to print stands behind `// → `. */
const exampleOf = (name: string, code: string): Example => ({
  name,
  code,
  prints: [...code.matchAll(/\/\/ → (.+)$/gm)].map(([, line]) => line),
});

/** The `@example` of every docstring of the package's interface. */
export const docstringExamples = (): readonly Example[] =>
  readdirSync(`${ROOT}src/api`).flatMap((file) => {
    const source = readFileSync(`${ROOT}src/api/${file}`, 'utf8');
    return [...source.matchAll(/^ \* @example\n((?: \*.*\n)+?) \*\/$/gm)].map(([, lines]) =>
      exampleOf(`src/api/${file}`, lines.replace(/^ \* ?/gm, '')),
    );
  });

/** The programs on the README. */
export const readmeExamples = (): readonly Example[] =>
  [...readFileSync(`${ROOT}README.md`, 'utf8').matchAll(/^```(?:ts|js)\n(.*?)^```$/gms)].map(([, code], i) =>
    exampleOf(`README.md, program ${i + 1}`, code),
  );
