import { readFileSync } from 'node:fs';

const DIST = new URL('../../dist/', import.meta.url);

/** The files of the kernel and of what it calls. */
const FILES = [
  ...['exp', 'sin-cos'].map((name) => `math/${name}`),
  ...[
    'rotation',
    'sliding',
    'rolling',
    'runge-kutta',
    'contact-kinematics',
    'film',
    'ring-track',
    'rings',
  ].map((name) => `motion/kernel/${name}`),
  ...['path-ahead', 'friction-ahead', 'shot-stepper', 'samples'].map((name) => `motion/kernel/${name}`),
];

/** Variables whose type their first expression does not say: whole numbers from functions of fractions, and sums that begin at 0. */
const WHOLE = ['back', 'oldest', 'at'];
const FRACTIONS = ['sum', 'moment', 'before', 'steepest', 'most'];

/** Functions that return whole numbers or claims. */
const WHOLE_RESULTS = /^(advance|stepToStop|canRoll|canGrip|slipIsOver|isThin|isFiniteState|findNearRings)$/;

type Values = Record<string, unknown>;
type Arrays = Record<string, Float64Array | Int32Array>;

/**
 * The shot kernel in C, translated line by line from the build: the kernel holds nothing but arrays, numbers and functions without
 * closures. So both do the same arithmetic in the same order, and only the compilers differ.
 */
export async function cTwin(): Promise<string> {
  const load = async (path: string): Promise<Values> => import(new URL(`${path}.js`, DIST).href);
  const { memory, ...sizes } = await load('motion/kernel/memory');
  const { record, ...arrays } = memory as Arrays & { record: Arrays };
  for (const [name, column] of Object.entries(record)) (arrays as Arrays)[`record_${name}`] = column;
  const { GRID } = await load('motion/lane/film-grid');
  const { LANE_WIDTH } = await load('base/constants');
  const slots = { ...(await load('motion/kernel/slots')), GRID } as Record<string, Values>;
  const shared: Values = { ...sizes, LANE_WIDTH };
  const files = FILES.map((file) =>
    translated(readFileSync(new URL(`${file}.js`, DIST), 'utf8'), shared, slots),
  );
  const all = { ...slots.STATE, ...slots.STEP, ...slots.FLAG, ...slots.GROUND };
  return [
    HEAD,
    defines(sizes).on,
    ...Object.entries(arrays as Arrays).map(
      ([name, array]) => `static ${array instanceof Int32Array ? 'int' : 'double'} ${name}[${array.length}];`,
    ),
    ...files.flatMap(({ heads }) => heads.map((head) => `${head};`)),
    ...files.map(({ text }) => text),
    defines(all).on,
    MAIN,
  ].join('\n');
}

function defines(names: Values): { readonly on: string; readonly off: string } {
  const numbers = Object.entries(names).filter(([, value]) => typeof value === 'number') as [
    string,
    number,
  ][];
  const literal = (value: number): string =>
    Number.isInteger(value) ? `(${value})` : `(${value.toPrecision(17)})`;
  return {
    on: numbers.map(([name, value]) => `#define ${name} ${literal(value)}`).join('\n'),
    off: numbers.map(([name]) => `#undef ${name}`).join('\n'),
  };
}

interface Translated {
  readonly text: string;
  /** Of its functions. */
  readonly heads: readonly string[];
}

/** One file: its constants, which end with it, and its functions. Adds to `shared` what files after it may import. */
function translated(source: string, shared: Values, slots: Record<string, Values>): Translated {
  const own: Values = {};
  const valueIn = (expression: string): unknown => {
    const scope = { ...shared, ...own };
    return new Function(...Object.keys(scope), `return ${expression}`)(...Object.values(scope));
  };
  const functions = source
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/\/\/.*$/gm, '')
    .replace(/^import .*$/gm, '')
    .replace(/^export const frictionAt = [\s\S]*?;\n/gm, '') // not of a shot
    .replace(/^export function (filmAt|enterStretch)\([\s\S]*?^}\n/gm, '')
    .replace(/^const (\w+) = \(\) => ([\s\S]*?);$/gm, 'function $1() {\n    return $2;\n}')
    .replace(/^const \{([^}]*)\} = (\w+);$/gm, (_, names: string, group: string) => {
      for (const name of names.split(',').map((each) => each.trim()))
        own[name] = (slots[group] ?? (own[group] as Values))?.[name];
      return '';
    })
    .replace(
      /^(export )?const (\w+) = ([^;]*);$/gm,
      (_, exported: string | undefined, name: string, expression: string) => {
        if (name === 'POWERS_OF_TWO') return '';
        const value = valueIn(expression);
        if (exported) shared[name] = value;
        own[name] = value;
        return exported ? defines({ [name]: value }).on : '';
      },
    )
    .replaceAll('{ filmEnd }', 'filmEnd')
    .replaceAll('lent.film, lent.surface', 'lentFilm, lentFilmEnd')
    .replaceAll('record.', 'record_')
    .replaceAll('keep()', 'flags[RECORDED] = 0')
    .replaceAll('===', '==')
    .replace(/\b(\d+) \/ (\d+)\b/g, '$1.0 / $2')
    .replace(/\(([^()]*)\) \| 0/g, '(int)($1)')
    .replaceAll('Math.floor', '(int)floor')
    .replaceAll('Number.isFinite', 'isfinite')
    .replaceAll('Number.POSITIVE_INFINITY', 'INFINITY')
    .replaceAll('Math.abs', 'fabs')
    .replace(/Math\.(\w+)\(/g, '$1_(')
    .replace(/\b(sin|cos)Near\(([^,()]+)\)/g, '$1Near($2, 0)')
    .replaceAll('for (let ', 'for (int ')
    .replace(
      /\b(?:const|let) (\w+) = /g,
      (_, name: string) =>
        `${WHOLE.includes(name) ? 'int' : FRACTIONS.includes(name) ? 'double' : '__auto_type'} ${name} = `,
    );
  const heads: string[] = [];
  const text = functions.replace(
    /^(?:export )?function (\w+)\(([^)]*)\) \{([\s\S]*?)^\}/gm,
    (_, name: string, given: string, body: string) => {
      const names = given
        .split(',')
        .map((each) => each.trim().replace(/ = .*/, ''))
        .filter((each) => each && each !== 'keep');
      const result = !/return [^;]/.test(body) ? 'void' : WHOLE_RESULTS.test(name) ? 'int' : 'double';
      const head = `static ${result} ${name}(${names.map(typed).join(', ') || 'void'})`;
      heads.push(head);
      return `${head} {${body}}`;
    },
  );
  const { on, off } = defines(Object.fromEntries(Object.entries(own).filter(([name]) => !(name in shared))));
  return { text: `${on}\n${text}\n${off}`, heads };
}

function typed(name: string): string {
  if (/^(state|values|scaledRates|rates|nodes)$/.test(name)) return `double *${name}`;
  if (name === 'rings') return `int *${name}`;
  return `${/^(count|number|more)$/.test(name) ? 'int' : 'double'} ${name}`;
}

const HEAD = `
#include <math.h>
#include <stdbool.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>
static double sin_(double x) { return sin(x); }
static double cos_(double x) { return cos(x); }
static double sqrt_(double x) { return sqrt(x); }
static double ceil_(double x) { return ceil(x); }
#define exp own_exp
#define sin own_sin
#define cos own_cos
#define tan own_tan
#define tanh own_tanh
static double max2(double a, double b) { return a > b ? a : b; }
static double max3(double a, double b, double c) { return max2(max2(a, b), c); }
static double min2(double a, double b) { return a < b ? a : b; }
#define PICK(a, b, c, name, ...) name
#define max_(...) PICK(__VA_ARGS__, max3, max2, 0)(__VA_ARGS__)
#define min_(...) min2(__VA_ARGS__)
static double powersOfTwo[1100];
#define POWERS_OF_TWO powersOfTwo
static double *lentFilm;
static double lentFilmEnd;
static void enterStretch(int number) { (void)number; }
`;

/** Reads shots as they stand at release, rolls all of them in so many blocks, and prints the least time of a block, µs a shot, and all ends. */
const MAIN = `
static double rollToEnd(double longestStep) {
  sampleRelease();
  int steps = 0, mostSteps = MOST_CAUTIOUS * ((int)(12 / longestStep) + 2);
  for (; steps < mostSteps && step[TIME] < 12; steps++) {
    step[LONGEST] = min2(longestStep, 12 - step[TIME]);
    int event = advance();
    if (event == 4) return NAN;
    if (event != 1) { sampleStep(); settleStep(); }
    if (event == 3 || fabs(here[X]) > ground[HALF_WIDTH]) break;
  }
  return here[X];
}
struct Shot { double here[16], ball[16], R_BP[16], ground[16], ring[16], step[24], flags[24], filmEnd, film[81 * 123]; };
int main(int count, char **given) {
  for (int i = 0; i < 1100; i++) powersOfTwo[i] = ldexp(1, i - 540);
  int shots = atoi(given[2]), blocks = atoi(given[3]);
  struct Shot *all = malloc(shots * sizeof(struct Shot));
  double *ends = malloc(shots * sizeof(double)), least = INFINITY;
  FILE *file = fopen(given[1], "rb");
  if (count != 4 || !file || fread(all, sizeof(struct Shot), shots, file) != (size_t)shots) return 1;
  for (int b = 0; b < blocks; b++) {
    clock_t start = clock();
    for (int n = 0; n < shots; n++) {
      struct Shot *s = all + n;
      memcpy(here, s->here, sizeof here);
      memset(endRates, 0, sizeof endRates);
      memcpy(ball, s->ball, sizeof s->ball);
      memcpy(R_BP, s->R_BP, sizeof s->R_BP);
      memcpy(ground, s->ground, sizeof s->ground);
      memcpy(ring, s->ring, sizeof s->ring);
      memcpy(step, s->step, sizeof s->step);
      for (int i = 0; i < 24; i++) flags[i] = (int)s->flags[i];
      memset(placeCarried, 0, sizeof placeCarried);
      memset(ringPassed, 255, sizeof ringPassed);
      lentFilm = s->film;
      lentFilmEnd = s->filmEnd;
      ends[n] = rollToEnd(step[LONGEST]);
    }
    double took = 1e6 * (clock() - start) / CLOCKS_PER_SEC / shots;
    if (took < least) least = took;
  }
  printf("%.17g\\n", least);
  for (int n = 0; n < shots; n++) printf("%.17g\\n", ends[n]);
  return 0;
}
`;
