import type { Equipment } from '@brinewright/equipment';
import { shippedTexts } from './shipped.ts';
import type { DefinitionText } from './source.ts';
import { readDefinitions } from './views/definitions/read-definitions.ts';

/** Compiled once for each set of definitions; uploaded ones that do not compile are left out, each by itself. */
export class EquipmentInUse {
  #made: { readonly of: string; readonly equipment: Equipment } | undefined;

  with(added: readonly DefinitionText[]): Equipment {
    const of = JSON.stringify(added);
    if (this.#made?.of !== of) {
      const { equipment } = readDefinitions(shippedTexts, added).compiled;
      this.#made = { of, equipment };
    }
    return this.#made.equipment;
  }
}
