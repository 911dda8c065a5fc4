import { DEGREE, to } from '../base/units.js';
import type { ArcsClash } from '../layout/layout.js';
import type { ClashInDegrees } from '../records/refusals/layout-refusals.js';

/** Why three distances are no layout, with arcs in the units of a refusal. */
export function clashInDegrees(clash: ArcsClash): ClashInDegrees {
  switch (clash.why) {
    case 'pin-on-pap':
      return clash;
    case 'buffer-too-long':
      return {
        why: clash.why,
        pinBufferDeg: to(clash.pinBuffer, DEGREE),
        pinToPapDeg: to(clash.pinToPap, DEGREE),
      };
    case 'marker-out-of-reach':
      return {
        why: clash.why,
        pinToMarkerDeg: to(clash.pinToMarker, DEGREE),
        markerToPapDeg: to(clash.markerToPap, DEGREE),
      };
  }
}
