import type { BeliefTopic } from '../../../records/answers/statements/beliefs.js';
import { REACTION_NUMBERS } from '../../../records/schemas/reaction-numbers.js';
import type { BeliefQuantity, BelievedId } from '../../../records/shared/beliefs.js';
import type { DisplayUnit, Units } from '../../text/display-units.js';
import { withUnit } from '../../text/display-units.js';
import type { Wording } from './wording.js';

/** What practice believes, and what physics finds, as sentences. */
export const BELIEF_FINDINGS: Wording<BeliefTopic> = {
  'belief-beside-physics': (params, units) => {
    const { says, reading, most, byPhysics, verdict } = params;
    const unit = unitOf(reading, units);
    const believed = `practice adds up to ${changeText(most, unit)} ${movedText(params, units)}`;
    if (byPhysics === null) return `${says} Here ${believed}; physics cannot test it separately.`;
    return `${says} Here ${believed}; physics finds ${changeText(byPhysics, unit)}, ${VERDICTS[verdict]}.`;
  },
};

const VERDICTS = {
  agrees: 'and so agrees',
  disagrees: 'which is the opposite',
  'hardly-shows': 'which is hardly visible',
  'not-tried': 'not tried',
} as const;

const changeText = (value: number, unit: DisplayUnit): string => `${unit.change(value)} ${unit.name}`;

/** The unit a reaction number that practice speaks of is shown in. */
const unitOf = (reading: BelievedId, units: Units): DisplayUnit =>
  units[reading === 'rollStartFt' ? 'lane' : REACTION_NUMBERS[reading].compared.quantity];

function movedText(
  { quantity, from, to }: { quantity: BeliefQuantity; from: number; to: number },
  { tape, gyration }: Units,
): string {
  const across = (show: (value: number) => string, what: string): string =>
    `as ${what} goes from ${show(from)} to ${show(to)}`;
  const angle = (value: number): string => `${value}°`;
  const inTape = (value: number): string => withUnit(value, tape);
  const inGyration = (value: number): string => withUnit(value, gyration);
  switch (quantity) {
    case 'drillingAngleDeg':
      return across(angle, 'the drilling angle');
    case 'valAngleDeg':
      return across(angle, 'the VAL angle');
    case 'pinToPapIn':
      return across(inTape, 'pin-to-PAP');
    case 'markToPapIn':
      return across(inTape, 'the mark’s distance from the PAP');
    case 'differentialIn':
      return across(inGyration, 'drilled differential');
    case 'intermediateDifferentialIn':
      return across(inGyration, 'drilled intermediate differential');
    case 'rgIn':
      return across(inGyration, 'drilled RG');
    case 'finishGrit':
      return across((value) => `${value} grit`, 'the finish');
  }
}
