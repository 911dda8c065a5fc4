/** Sections of a recommendation behind its first screen, in the order in which all of them are printed: word and what it holds. */
export const RECOMMEND_SECTIONS = {
  compare: 'ranked layouts and key numbers',
  practice: 'physics and practice',
  path: 'how they roll',
  line: 'line to play, margin for error',
  why: 'why it won',
  levers: 'what else would move it',
  surer: 'what would make it more certain',
  marks: 'marks to lay out',
  searched: 'what was searched',
  assumed: 'what is assumed',
  cautions: 'before drilling',
} as const;

export type SectionId = keyof typeof RECOMMEND_SECTIONS;

export const SECTION_IDS = Object.keys(RECOMMEND_SECTIONS) as readonly SectionId[];
