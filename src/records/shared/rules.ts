import { readdirSync, readFileSync } from 'node:fs';
import { z } from 'zod';
import { InputError } from '../../base/errors.js';
import { sharedFile } from './shared-data.js';

const span = z.strictObject({ least: z.number(), most: z.number() });

const ruleSetSchema = z.strictObject({
  id: z.string(),
  title: z.string(),
  edition: z.string(),
  about: z.string(),
  mostWeightLb: z.number(),
  circumferenceIn: span,
  mostGrippingHoles: z.number(),
  balanceHole: z.boolean(),
  /** Widest vent, and how many may lead into one gripping hole. */
  vents: z.strictObject({ mostDiameterIn: z.number(), mostEachHole: z.number() }),
  /** Most ounces in each direction, for balls above a weight. */
  staticWeight: z.strictObject({ mostOz: z.number(), aboveLb: z.number() }),
  asManufactured: z.strictObject({ rgIn: span, mostDifferentialIn: z.number() }),
  sources: z.array(
    z.strictObject({
      item: z.string(),
      source: z.string(),
      tag: z.enum(['published', 'secondary', 'memory']),
    }),
  ),
});

/** The sport's rules as data, with edition and sources. */
export type RuleSet = z.infer<typeof ruleSetSchema>;

export const DEFAULT_RULE_SET = 'federation-2020';

/** All rule sets in `shared/rules`, by file name. */
export const loadRuleSets = (): readonly RuleSet[] =>
  readdirSync(sharedFile('rules/'))
    .filter((name) => name.endsWith('.json'))
    .sort()
    .map((name) => ruleSetSchema.parse(JSON.parse(readFileSync(sharedFile(`rules/${name}`), 'utf8'))));

/**
 * One rule set by its id.
 *
 * @throws {InputError} `unknown-rules`, naming those there are
 */
export function loadRuleSet(id: string = DEFAULT_RULE_SET): RuleSet {
  const all = loadRuleSets();
  const found = all.find((set) => set.id === id);
  if (found) return found;
  throw new InputError('unknown-rules', {
    field: 'rules',
    rule: `must be ${all.map((set) => `"${set.id}"`).join(' or ')}`,
    got: `"${id}"`,
    hint: 'Leave the flag out for the usual rule set.',
  });
}
