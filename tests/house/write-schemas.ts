import { mkdirSync, writeFileSync } from 'node:fs';
import { sharedFile } from '../../src/records/shared/shared-data.js';
import { jsonSchemas } from './json-schemas.js';

/* Maintainers' script, `npm run schemas`: writes the JSON Schemas of all records into shared/schemas. */

mkdirSync(sharedFile('schemas/'), { recursive: true });
for (const [name, text] of jsonSchemas()) writeFileSync(sharedFile(`schemas/${name}`), text);
