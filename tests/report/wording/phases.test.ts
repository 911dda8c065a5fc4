import { describe, expect, test } from 'vitest';
import { PHASES, phaseAt, phaseSpans } from '../../../src/report/wording/phases.js';
import { reaction } from '../../support/recommend-answer.js';

const shots = [
  {
    name: 'hooks, then rolls',
    at: [38, 45, true],
    end: 60,
    spans: { skid: [0, 38], hook: [38, 45], roll: [45, 60] },
  },
  {
    name: 'rolls before its hook has started',
    at: [38, 30, true],
    end: 60,
    spans: { skid: [0, 30], hook: [30, 30], roll: [30, 60] },
  },
  {
    name: 'rolls where its hook starts',
    at: [38, 38, true],
    end: 60,
    spans: { skid: [0, 38], hook: [38, 38], roll: [38, 60] },
  },
  {
    name: 'slides to the pins',
    at: [38, 60, false],
    end: 60,
    spans: { skid: [0, 38], hook: [38, 60], roll: [60, 60] },
  },
  {
    name: 'rolls and never hooks',
    at: [60, 20, true],
    end: 60,
    spans: { skid: [0, 20], hook: [20, 20], roll: [20, 60] },
  },
  {
    name: 'neither hooks nor rolls',
    at: [60, 60, false],
    end: 60,
    spans: { skid: [0, 60], hook: [60, 60], roll: [60, 60] },
  },
  {
    name: 'is drawn to 35 ft only',
    at: [38, 45, true],
    end: 35,
    spans: { skid: [0, 35], hook: [35, 35], roll: [35, 35] },
  },
] as const;

describe.each(shots)(
  'phases of a ball that $name',
  ({ at: [hookStartFt, rollStartFt, rollsBeforePins], end, spans }) => {
    const shot = { ...reaction, hookStartFt, rollStartFt, rollsBeforePins };

    test('skid lasts to the start of hook or roll, whichever comes first', () => {
      expect(phaseSpans(shot, end)).toEqual(spans);
    });

    test('the phase at any distance is that of the span it lies in', () => {
      for (let ft = 0.5; ft < end; ft++) {
        const within = PHASES.filter((phase) => spans[phase][0] <= ft && ft < spans[phase][1]);
        expect(within).toEqual([phaseAt(shot, ft)]);
      }
    });
  },
);
