import { type Markup, raw } from '@brinewright/papers';

/** The bore seen from its end, half of it cut. */
export const brandMark: Markup = raw(
  '<svg class="mark" width="44" height="44" viewBox="0 0 44 44" aria-hidden="true">' +
    '<path class="hatch" d="M23 6.5l14.5 14.5M23 12.5l15 15M28 23l7 7M27 28l5 5M23 30l6 6"/>' +
    '<circle class="ring" cx="22" cy="22" r="17" stroke-width="2.6"/><circle class="ring" cx="22" cy="22" r="7.5" stroke-width="2"/>' +
    '<path class="axis" d="M22 0v44"/></svg>',
);

export const backMark: Markup = raw(
  '<svg width="14" height="22" viewBox="0 0 14 22" aria-hidden="true"><path d="M12 2L3 11l9 9"/></svg>',
);

const tank =
  '<path class="edge" d="M12 88V32q0-8 8-8t8 0q8 0 8 8v56z"/><path class="box" d="M15 12h18v10H15z"/><path class="fine" d="M12 54h24"/>';
const beads = [18, 24, 30]
  .flatMap((x, column) =>
    [60, 67, 74, 81].map((y) => `<circle class="bead" cx="${x}" cy="${y + (column % 2) * 2}" r="2"/>`),
  )
  .join('');
const brineTank =
  '<path class="brine" d="M51 78h22l-.6 10H51.6z"/><path class="edge" d="M49 50l2.6 38h20.8L75 50z"/><path class="box" d="M47 46h30v4H47z"/>' +
  '<circle class="dot" cx="56" cy="82" r="1.4"/><circle class="dot" cx="62" cy="85" r="1.4"/><circle class="dot" cx="68" cy="82" r="1.4"/>' +
  '<path class="fine" d="M33 17h29v29"/>';

/** Whether a unit has a brine tank, at a glance; the words beside it say the same. */
export const unitMark = (kind: 'softener' | 'filter' | undefined): Markup =>
  raw(
    `<svg class="unit" width="84" height="94" viewBox="0 0 84 94" aria-hidden="true">${tank}${beads}` +
      `${kind === 'softener' ? brineTank : ''}<path class="ground" d="M2 90h80"/></svg>`,
  );
