import type { Caution } from '../../records/answers/statements/cautions.js';
import type { Page } from '../text/page.js';
import { bullets, section } from '../text/section.js';
import { sayAll } from '../wording/say.js';

/** What to be careful about, at the end of a screen. */
export const cautionSection = (cautions: readonly Caution[], page: Page): string[] =>
  section('Before drilling', bullets(sayAll(cautions, page.units), page).map(page.paint.caution), page);
