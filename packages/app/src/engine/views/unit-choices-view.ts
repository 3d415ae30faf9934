import { type Equipment, undescribed } from '@brinewright/equipment';
import type { SiteOf } from '../sites.ts';
import type { Speech } from '../speech.ts';
import { unitName } from './places-view.ts';

export type UnitChoicesView = {
  readonly sites: readonly { readonly stream: string; readonly name: string; readonly units: number }[];
  /** Units of the site that was chosen. */
  readonly units: readonly {
    readonly id: string;
    readonly name: string;
    readonly family: string;
    readonly kind: 'softener' | 'filter';
  }[];
  readonly families: readonly {
    readonly id: string;
    readonly title: string;
    readonly kinds: readonly ('softener' | 'filter')[];
  }[];
  /** Digest of the definitions a visit begun now is worked with. */
  readonly definitions: string;
};

/** What a new visit may be to. */
export const unitChoicesView = (
  sites: readonly SiteOf[],
  equipment: Equipment,
  stream: string | undefined,
  speech: Speech,
): UnitChoicesView => ({
  sites: sites
    .map(({ stream: id, folded }) => ({
      stream: id,
      name: folded.site?.name ?? '',
      units: folded.conditioners.length,
    }))
    .toSorted((a, b) => (a.name < b.name ? -1 : 1)),
  units: (sites.find((site) => site.stream === stream)?.folded.conditioners ?? []).map((unit) => ({
    id: unit.id,
    name: unitName(unit, speech),
    family: familyTitle(equipment, unit.family, speech),
    kind: unit.kind,
  })),
  families: [...equipment.families.values()]
    .filter(({ id }) => id !== undescribed && !id.startsWith('stock/'))
    .map(({ id, title, kinds }) => ({ id, title: speech.text(title), kinds })),
  definitions: equipment.digest,
});

const familyTitle = ({ families }: Equipment, id: string, speech: Speech): string => {
  const family = families.get(id);
  return family === undefined || id === undescribed
    ? speech.word('app.new.undescribed')
    : speech.text(family.title);
};
