/** A number of a shot: what it is called, how it is compared and asked for. */
interface ReactionNumber {
  readonly name: string;
  /** Where layouts and worlds are compared by it; left out where they are not. */
  readonly compared?: Compared;
  /** Where a person may wish for it. The fitted regression must answer with it (`regression/targets.ts`). */
  readonly wish?: WishWords;
}

/** How a number stands in tables and figures that compare layouts or worlds. */
interface Compared {
  /** In a row's head. */
  readonly row: string;
  /** Above a narrow column. */
  readonly short: string;
  /** Which of the units a person reads it is shown in (`report/text/display-units.ts`). */
  readonly quantity: string;
  /** The unit that answers give it in, as it appears after the number. */
  readonly unit: string;
  /** Digits after the point in a sentence, of the number and of a difference. */
  readonly digits: number;
  readonly changeDigits: number;
  /** What a layout with more of it is, and one with less: `it hooks later`. */
  readonly more: string;
  readonly less: string;
  /** Whether it is seen on the lane; else it is read off the ball. */
  readonly isOnLane: boolean;
  /** Whether its changes are divided among the numbers of the layout (Shapley shares), and shown for one step of each. */
  readonly isShared: boolean;
}

/** How a wish is worded. */
interface WishWords {
  /** Its name in records and answers; the flag is made from it. */
  readonly id: string;
  /** What it is about: `when it starts to hook`. */
  readonly about: string;
  readonly question: string;
  /** Its five steps, from the least number to the greatest. */
  readonly steps: readonly [string, string, string, string, string];
}

/**
 * All numbers of a shot, by their names in answers, in the order in which tables show them. How each is read from a shot
 * is in `simulate/readings.ts`.
 */
export const REACTION_NUMBERS = {
  hookStartFt: {
    name: 'hook start',
    compared: {
      row: 'hook starts',
      short: 'starts',
      quantity: 'lane',
      unit: 'ft',
      digits: 1,
      changeDigits: 1,
      more: 'later',
      less: 'earlier',
      isOnLane: true,
      isShared: true,
    },
    wish: {
      id: 'hookStart',
      about: 'when it starts to hook',
      question: 'When should the hook start?',
      steps: ['earliest', 'early', 'middle', 'late', 'latest'],
    },
  },
  rollStartFt: { name: 'roll start' },
  sharpnessDegPerFt: {
    name: 'sharpness',
    compared: {
      row: 'sharpness',
      short: 'sharp',
      quantity: 'sharpness',
      unit: 'deg/ft',
      digits: 2,
      changeDigits: 3,
      more: 'sharper',
      less: 'smoother',
      isOnLane: true,
      isShared: true,
    },
    wish: {
      id: 'sharpness',
      about: 'how it hooks',
      question: 'How should the hook look?',
      steps: ['smoothest', 'smooth', 'middle', 'sharp', 'sharpest'],
    },
  },
  breakpointFt: { name: 'distance of the breakpoint' },
  breakpointBoard: { name: 'board of the breakpoint' },
  totalHookBoards: {
    name: 'total hook',
    compared: {
      row: 'total hook',
      short: 'hook',
      quantity: 'boards',
      unit: 'boards',
      digits: 1,
      changeDigits: 1,
      more: 'more',
      less: 'less',
      isOnLane: true,
      isShared: true,
    },
    wish: {
      id: 'totalHook',
      about: 'how much it hooks',
      question: 'How much should it hook in all?',
      steps: ['least', 'little', 'middle', 'much', 'most'],
    },
  },
  entryAngleDeg: {
    name: 'entry angle',
    compared: {
      row: 'entry angle',
      short: 'entry',
      quantity: 'angle',
      unit: 'deg',
      digits: 1,
      changeDigits: 1,
      more: 'steeper',
      less: 'flatter',
      isOnLane: true,
      isShared: false,
    },
  },
  pinsBoard: { name: 'board at the pins' },
  flareIn: {
    name: 'flare',
    compared: {
      row: 'flare',
      short: 'flare',
      quantity: 'flare',
      unit: 'in',
      digits: 1,
      changeDigits: 1,
      more: 'more',
      less: 'less',
      isOnLane: false,
      isShared: true,
    },
  },
  ringClearanceIn: { name: 'nearest ring to a hole' },
  turns: { name: 'turns' },
  speedAtPinsMph: { name: 'speed at the pins' },
  revRateAtPinsRpm: { name: 'rev rate at the pins' },
} as const satisfies Readonly<Record<string, ReactionNumber>>;

type Table = typeof REACTION_NUMBERS;

/** The numbers whose entry has these fields. */
type NumberWith<Fields> = { [K in keyof Table]: Table[K] extends Fields ? K : never }[keyof Table];

export type ReactionId = keyof Table;
export type ComparedId = NumberWith<{ compared: object }>;
export type LaneId = NumberWith<{ compared: { isOnLane: true } }>;
export type SharedId = NumberWith<{ compared: { isShared: true } }>;
export type WishedId = NumberWith<{ wish: object }>;

/** A wish, and the number that answers it. */
export type Wish = Table[WishedId]['wish']['id'];
type NumberOf = { readonly [K in WishedId as Table[K]['wish']['id']]: K };

const entryOf = (id: ReactionId): ReactionNumber => REACTION_NUMBERS[id];

export const REACTION_IDS = Object.keys(REACTION_NUMBERS) as readonly ReactionId[];
export const COMPARED_IDS = REACTION_IDS.filter((id): id is ComparedId => entryOf(id).compared !== undefined);
export const LANE_IDS = COMPARED_IDS.filter((id): id is LaneId => REACTION_NUMBERS[id].compared.isOnLane);
export const SHARED_IDS = COMPARED_IDS.filter((id): id is SharedId => REACTION_NUMBERS[id].compared.isShared);
export const WISHED_IDS = REACTION_IDS.filter((id): id is WishedId => entryOf(id).wish !== undefined);

export const WISHES: readonly Wish[] = WISHED_IDS.map((id) => REACTION_NUMBERS[id].wish.id);

/** The number that answers each wish. */
export const NUMBER_OF_WISH = Object.fromEntries(
  WISHED_IDS.map((id) => [REACTION_NUMBERS[id].wish.id, id]),
) as NumberOf;

/** How a wish is worded. */
export const wishWords = (wish: Wish): WishWords => REACTION_NUMBERS[NUMBER_OF_WISH[wish]].wish;

/** The ends of a wish's five steps: `1 earliest, 5 latest`. */
export const wishEnds = (wish: Wish): string => {
  const { steps } = wishWords(wish);
  return `1 ${steps[0]}, 5 ${steps[4]}`;
};
