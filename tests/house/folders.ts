/**
 * What a folder may see besides what stands below it: the program sees all; what reckons and what shows do not see one another, so
 * that no sentence is made where numbers are; what both share sees neither.
 */
type Side = 'program' | 'engine' | 'screen' | 'shared';

export interface Folder {
  /** Path below `src`. */
  readonly path: string;
  readonly side: Side;
  /** What it holds, in a line. */
  readonly holds: string;
  /** Whether it is arithmetic alone: no package, no file, no clock. */
  readonly isPure?: true;
}

const of = (side: Side, folders: Readonly<Record<string, string>>, isPure = false): readonly Folder[] =>
  Object.entries(folders).map(([path, holds]) => ({ path, side, holds, ...(isPure ? { isPure } : {}) }));

/**
 * All folders of `src`, each above those it may import. The linter's rule (`.biome.jsonc`) and the map in DEVELOPERS.md are written from
 * this list by `npm run house`.
 */
export const FOLDERS: readonly Folder[] = [
  ...of('program', {
    cli: 'the program: its commands and their helps',
    'cli/commands': 'what each command does, one file each',
    'cli/answering':
      'from records named or asked for to an answer, found while the review is read where it can be',
    'cli/log': 'changes to a log of shots: one line, shot after shot, a list, corrections',
    'cli/learned': 'what the kept log says, for answers to use; nights removed from it',
    'cli/keys': 'what each key does after an answer',
    'cli/completions': 'scripts with which shells complete commands',
    'cli/files': 'records, lists, pages and tables named on the command line; where things are kept',
    'cli/print': 'answers on stdout; progress, questions and failures on stderr',
    'cli/flags': 'flags and the values they take',
    'cli/terminal': 'streams, exit codes, signals, errors of the system',
    api: 'what the package offers to other programs: records in, answers out',
  }),
  ...of('engine', {
    coach: 'many bowlers, balls and lanes at once',
    answer: 'one file for each answer: inputs in, data in the units people read out',
    'answer/adjust': 'what to change where a drilled ball does not do what was wanted',
    'answer/core': 'a core as its file has it: checked, cut, weighed',
    'answer/map': 'drilled numbers over one number of the layout, and how far they move',
    'answer/sheet': 'what a work sheet holds: ways to the marks, holes, rings',
    'answer/parts': 'what several answers hold: drilled numbers, marks, lines, rings, legality',
    explain: 'why, and how sure: shares, counterfactuals, limits, assumptions, other levers',
    'explain/surer': 'the value of information: what knowing each unknown would be worth',
    learn: 'learning from logged shots: what they say about the unknowns, and whether the log fits the model',
    search: 'from wishes to ranked layouts: grid, successive halving, ranking over worlds',
    'search/surrogate': 'the fitted regression as a cheaper engine',
    'search/voices': 'physics alone, practice alone, and both combined, as readings of the same shots',
    'search/scoring': 'targets, scores, and what is expected of a layout',
    'search/candidates': 'layouts that may be marked, and why others are set aside',
    simulate: 'one layout in one world: line, shot, workers',
    'simulate/unreal': 'virtual balls that separate one effect of a drilled ball',
    'simulate/worlds':
      'worlds: plausible values of what lasts, what scatters from shot to shot, what belongs to one drilled ball',
    prepare: 'records into problems in SI: cores, holes, marks',
    'prepare/core-file': 'core files into bodies, and their faults',
    regression: 'the fitted regression: features, model, tuning, and whether it matches this engine',
  }),
  ...of(
    'engine',
    {
      'motion/reaction': 'reaction numbers of a shot, oil rings, aim',
      'motion/shot': 'a shot from release to pins: what goes in, what comes out',
      'motion/kernel': 'a shot in flat arrays: equations of motion, steps, oil rings, samples',
      'motion/lane': 'oil, wear, friction, clean cover',
      'ball/core': 'core families, fitted to published numbers',
      'ball/drill': 'holes and plugs in a ball; drilled numbers, static weights',
      'ball/section': 'plane sections of solids and meshes',
      'ball/solid': 'solids, lines through them, what they share',
      'ball/mesh': 'closed triangle meshes: STL, checks, moments, lines through them',
      'ball/mass': 'mass, centre and second moments of pieces',
      layout: 'both layout notations, grip, holes and vents on the sphere',
    },
    true,
  ),
  ...of('screen', {
    'interview/ask': 'asks the questions and shows the review, one file for each kind',
    interview: 'a pure state machine of answers, and the records, review lines and draft made from them',
    'interview/questions': 'questions, and the guesses that replace answers, as data',
    'interview/prompt':
      'prompts made with inquirer: a line to type, a list to choose from; their keys and screen',
    'interview/measure': 'what a stopwatch, a video, an oil ring and a picture say about a release',
    'report/sheet': 'the work sheet, as text, SVG, PDF, PNG and HTML',
    'report/web': 'answers as web pages without script, one file each',
    'report/web/parts': 'what pages are made of: frame, first screen, sections, tables, figures',
    'report/screens': 'answers as screens of text, one file each',
    'report/tables': 'tables that screens and pages share',
    'report/drawings': 'ball and lane drawn in text',
    'report/charts': 'charts: what moves a number, what is reached, differences, shares',
    'report/picture': 'ball and lane as pictures',
    'report/lane': 'places on a drawn lane',
    'report/scene': 'pictures as data, and SVG, PDF and PNG made of them',
    'report/font': 'the embedded font',
    'report/csv': 'answers as comma-separated values',
    'report/wording': 'all sentences: codes and numbers in, English in the person’s units out',
    'report/wording/refusals': 'refusals as faults: field, rule, what was given, what to do',
    'report/wording/statements': 'a table of sentences for each topic of `records/answers/statements`',
    'report/text': 'page, tables, wrapping, units and digits',
  }),
  ...of('shared', {
    'records/home': 'the records a person keeps: read, changed, moved',
    'records/log': 'the log of shots: what a line says, which night it belongs to, what looks odd',
    'records/read': 'files into records, with every fault named',
    'records/answers': 'the shapes of all answers',
    'records/answers/parts': 'shapes that several answers hold',
    'records/refusals': 'why inputs are refused, as codes and numbers',
    'records/answers/sheet': 'the shape of what is marked on a ball, step by step',
    'records/answers/statements': 'the statements of answers, as codes and numbers: one topic a file',
    'records/schemas': 'the shapes of bowler, ball, core, grip, lane, layout and want',
    'records/shared': 'data of `shared`: rule sets, trade ranges, glossary',
    'records/text': 'reading typed text: layouts, fractions, quantities, names',
    threads: 'worker threads; if one dies, its open work fails',
    files: 'the one way files are written: atomically, under a lock',
  }),
  ...of('shared', { math: 'vectors, matrices, eigenvalues, the unit sphere' }, true),
  ...of('shared', { base: 'units, constants, errors, text made visible' }),
];

/** Whether a file of one folder may import one of another. */
export function maySee(from: Folder, to: Folder): boolean {
  if (from === to) return true;
  const isBelow = FOLDERS.indexOf(to) > FOLDERS.indexOf(from);
  return isBelow && (from.side === 'program' || to.side === from.side || to.side === 'shared');
}
