import type { Practices } from '../../../records/answers/statements/practice.js';
import { REACTION_NUMBERS } from '../../../records/schemas/reaction-numbers.js';
import { type Units, withUnit } from '../../text/display-units.js';
import { percent } from '../../text/figures.js';
import type { Wording } from './wording.js';

/** What common practice expects, and what the engine finds, as sentences. */
export const PRACTICES: Wording<Practices> = {
  'drilling-angle-hooks-later': (params, units) =>
    `A larger drilling angle hooks later. ${foundText(params, units)}`,
  'val-angle-turns-sharper': (params, units) =>
    `A smaller VAL angle, and with it a smaller pin buffer, turns the corner more sharply. ${foundText(params, units)}`,
  'pin-to-pap-flares-most': (params, units) =>
    `Flare is greatest with the pin near ${withUnit(params.to, units.tape)} from the PAP. ${foundText(params, units)}`,
  'flare-hooks-more': (params, units) => `More flare hooks more. ${foundText(params, units)}`,
};

type Found = Practices['flare-hooks-more'];

function foundText(found: Found, units: Units): string {
  const { reading, change } = found;
  const unit = units[REACTION_NUMBERS[reading].compared.quantity];
  return `Here, ${movedText(found, units)}: ${unit.change(change)} ${unit.name}; ${verdictText(found)}.`;
}

function movedText({ number, from, to }: Found, { tape }: Units): string {
  switch (number) {
    case 'drillingAngleDeg':
      return `drilling angle ${from}° to ${to}°`;
    case 'valAngleDeg':
      return `VAL angle ${from}° to ${to}°`;
    case 'pinToPapIn':
      return `pin-to-PAP ${withUnit(from, tape)} to ${withUnit(to, tape)}`;
  }
}

function verdictText({ reading, holdsIn, worlds, verdict }: Found): string {
  const { more, less } = REACTION_NUMBERS[reading].compared;
  switch (verdict) {
    case 'agrees':
      return `the engine agrees: ${more} in ${percent(holdsIn)} % of ${worlds} worlds`;
    case 'disagrees':
      return `the engine disagrees: ${less} in ${percent(1 - holdsIn)} % of ${worlds} worlds`;
    case 'depends':
      return `it depends on the world: ${more} in ${percent(holdsIn)} % of ${worlds}`;
    case 'hardly-shows':
      return 'in the engine that hardly shows beside what shots and lane vary';
  }
}
