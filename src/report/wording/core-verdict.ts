import type { CoreAnswer } from '../../records/answers/answer.js';
import { givenWithUnit, type Units, withUnit } from '../text/display-units.js';

/** What a check of a core comes to, in a sentence or two. */
export function coreVerdict(answer: CoreAnswer, units: Units): string {
  const { numbers, refused, doubts, known, weightLb, ball } = answer;
  const { gyration, weight, ounce, arc } = units;
  if (refused.length > 0 || !numbers)
    return 'No ball can be made with this core. The drawing shows the parts where the file puts them; the faults and remedies are listed below.';
  const doubt =
    doubts.length === 0
      ? 'Nothing looks wrong.'
      : `${doubts.length === 1 ? 'One thing' : `${doubts.length} things`} to check, listed below.`;
  const isUsed = known.some(({ code }) => code === 'old-holes-left-out');
  return (
    `${doubt} As a ${isUsed ? 'new ' : ''}${givenWithUnit(weightLb, weight)} ball${ball === null ? '' : ` (${ball})`} it has RG ${withUnit(numbers.rgIn, gyration)}, ` +
    `differential ${withUnit(numbers.differentialIn, gyration)}, intermediate differential ` +
    `${withUnit(numbers.intermediateDifferentialIn, gyration)}` +
    (numbers.topWeightOz === 0
      ? ', and no top weight: its CG is at its centre.'
      : `, top weight ${withUnit(numbers.topWeightOz, ounce)}, and its CG ${withUnit(numbers.pinToCgIn, arc)} from the pin.`)
  );
}
