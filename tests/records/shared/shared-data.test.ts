import { describe, expect, test } from 'vitest';
import { DEFAULT_RULE_SET, loadRuleSet, loadRuleSets } from '../../../src/records/shared/rules.js';
import { loadCautions, loadPractice } from '../../../src/records/shared/shared-data.js';
import { inputErrorOf } from '../../support/faults-of.js';
import { said } from '../../support/said.js';

describe('rule sets', () => {
  // Values as reported of the sport's manuals; tags say how far each was confirmed (see the files).
  test('the default holds what the federations have in force since 1 August 2020', () => {
    expect(loadRuleSet()).toMatchObject({
      id: DEFAULT_RULE_SET,
      mostWeightLb: 16, // secondary: USBC equipment manual, 2012 copy
      circumferenceIn: { least: 26.704, most: 27.002 }, // same
      mostGrippingHoles: 5, // published: World Bowling 11.12, 2019 issue
      balanceHole: false, // same
      vents: { mostDiameterIn: 0.25, mostEachHole: 1 }, // same, the count from memory
      staticWeight: { mostOz: 3, aboveLb: 10 }, // published: World Bowling 11.13.2a
      asManufactured: { rgIn: { least: 2.46, most: 2.8 }, mostDifferentialIn: 0.06 }, // secondary: USBC releases
    });
  });

  test('the variant differs by the weight above which static weights are limited only', () => {
    const numbers = (id: string) => {
      const { id: _, title: __, sources: ___, ...rest } = loadRuleSet(id);
      return rest;
    };
    const usual = numbers(DEFAULT_RULE_SET);
    expect(numbers('federation-2020-8lb')).toEqual({ ...usual, staticWeight: { mostOz: 3, aboveLb: 8 } });
  });

  test('every number of a rule set has a source', () => {
    for (const { id, sources } of loadRuleSets()) {
      const sourced = sources.flatMap(({ item }) => item.split(', ')).sort();
      expect(sourced, id).toEqual(
        [
          'asManufactured',
          'balanceHole',
          'circumferenceIn',
          'mostGrippingHoles',
          'mostWeightLb',
          'staticWeight',
          'vents.mostDiameterIn',
          'vents.mostEachHole',
        ].sort(),
      );
    }
  });

  test('an unknown one is refused with those there are', () => {
    const { code, message } = inputErrorOf(() => loadRuleSet('mine'));
    expect(code).toBe('unknown-rules');
    for (const { id } of loadRuleSets()) expect(message).toContain(`"${id}"`);
  });
});

describe('trade data', () => {
  test('the ranges are those of common practice (no source)', () => {
    const { drillingAngleDeg, valAngleDeg } = loadPractice();
    expect({ drillingAngleDeg, valAngleDeg }).toEqual({
      drillingAngleDeg: { least: 10, most: 90 },
      valAngleDeg: { least: 20, most: 70 },
    });
  });

  test('the cautions name every danger a reader must know of', () => {
    const all = said(loadCautions().map((code) => ({ code, params: {} })));
    for (const words of [
      'trained',
      'guarded',
      'clamped',
      'eye, ear and breathing protection',
      'no gloves',
      'dust and resin',
      'qualified fitter',
      'clinician',
      'local body',
      'cannot be undone',
    ])
      expect(all.toLowerCase()).toContain(words.toLowerCase());
  });
});
