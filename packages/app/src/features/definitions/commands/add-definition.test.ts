import { foldWorkshop } from '@brinewright/journal';
import { expect, it } from 'vitest';
import { writtenEntries } from '../../../engine/testing/written-entries.ts';
import { addDefinition } from './add-definition.ts';

it('is among the definitions of the workshop', () => {
  const file = 'a'.repeat(64);
  const { definitions, setAside } = foldWorkshop(
    writtenEntries(addDefinition('00000000-0000-7000-8000-000000000001', 'own.yaml', file)),
  );
  expect(setAside).toEqual([]);
  expect(definitions).toEqual([{ name: 'own.yaml', file }]);
});
