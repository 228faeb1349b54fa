import { describe, expect, it } from 'vitest';
import { kinds } from '../../src/jigs/index.js';
import { jsonSchemaText } from '../../src/spec/json-schema.js';
import { looseObjects } from '../support/loose-objects.js';

describe('the JSON Schema for editors', () => {
  it('is what the schemas of the spec and of all kinds make (npx vitest -u writes it anew)', async () => {
    await expect(jsonSchemaText(kinds)).toMatchFileSnapshot('../../templates-spec/roundwright.schema.json');
  });

  it('lets no unknown key through anywhere', () => {
    expect(looseObjects(JSON.parse(jsonSchemaText(kinds)))).toEqual([]);
  });

  it('says of every kind what it is', () => {
    for (const kind of Object.keys(kinds)) expect(jsonSchemaText(kinds)).toContain(`"${kind}"`);
  });
});
