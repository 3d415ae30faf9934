import { tokenCss } from './tokens.ts';

const waters = ['raw', 'treated', 'brine', 'drain'] as const;

const waterRules = waters
  .map((water) => `.bw .w-${water}{fill:var(--${water}-wash)}.bw .m-${water}{stroke:var(--${water}-mark)}`)
  .join('');

/** What the classes of a drawing mean. Weight, pattern and word first; colour last. */
const rules = [
  '.bw{display:block;max-width:100%;height:auto;font-family:var(--font);font-variant-numeric:tabular-nums;overflow:visible}',
  '.bw text{font-size:15px;font-weight:var(--wt);fill:var(--ink)}',
  '.bw .strong{font-weight:var(--wt-strong)}.bw .second{fill:var(--ink-2)}.bw .value{font-weight:var(--wt-value)}',
  '.bw .accent-ink{fill:var(--accent);font-weight:var(--wt-strong)}.bw .fail-ink{fill:var(--fail);font-weight:var(--wt-strong)}',
  '.bw .halo{paint-order:stroke;stroke:var(--sheet);stroke-width:4px;stroke-linejoin:round}',
  waterRules,
  '.bw .m-raw{stroke-width:1.1px}.bw .m-treated{stroke-width:.8px}.bw .m-drain{stroke-width:1.2px;fill:none}.bw .d-brine{fill:var(--brine-mark)}',
  '.bw .w-still,.bw .w-field{fill:var(--field)}.bw .w-metal{fill:var(--metal)}.bw .m-metal{stroke:var(--metal-mark);stroke-width:var(--w-fine)}.bw .m-ink{stroke:var(--ink);stroke-width:var(--w-rule)}',
  '.bw .d-bead{fill:none;stroke:var(--line);stroke-width:var(--w-rule)}',
  '.bw .fine,.bw .rule,.bw .edge,.bw .cut,.bw .axis,.bw .hidden{fill:none;stroke-linejoin:round}',
  '.bw .fine{stroke:var(--ink-2);stroke-width:var(--w-fine)}.bw .rule{stroke:var(--rule);stroke-width:var(--w-rule)}',
  '.bw .edge{stroke:var(--ink);stroke-width:var(--w-edge)}.bw .cut{stroke:var(--ink);stroke-width:var(--w-cut)}',
  '.bw .hidden{stroke:var(--ink);stroke-width:var(--w-rule);stroke-dasharray:5 3}.bw .axis{stroke:var(--ink-2);stroke-width:var(--w-rule);stroke-dasharray:12 3 2 3}',
  '.bw .solid{fill:var(--solid)}.bw .ink{fill:var(--ink)}.bw .sheet{fill:var(--sheet)}.bw .fail-fill{fill:var(--fail)}.bw .accent-fill{fill:var(--accent-fill)}.bw .wash{fill:var(--accent-wash)}.bw .fail-wash{fill:var(--fail-wash)}',
  '.bw .bed{fill:none;stroke:var(--sheet);stroke-width:6.5px;stroke-linecap:round}.bw .flow{fill:none;stroke:var(--ink);stroke-width:2.4px;stroke-dasharray:9 5}.bw .behind{fill:none;stroke:var(--ink);stroke-width:2.2px;stroke-dasharray:2 4}',
  '.bw .leak{fill:none;stroke:var(--fail);stroke-width:3px}.bw .torn{stroke:var(--fail)}',
  '.bw .balloon{fill:var(--field);stroke:var(--ink);stroke-width:1.5px}.bw .balloon.torn{stroke:var(--fail);stroke-width:3px}.bw text.number{font-weight:var(--wt-value);text-anchor:middle}',
  '.bw .accent-line{fill:none;stroke:var(--accent);stroke-width:2.4px}.bw .accent-dash{fill:none;stroke:var(--accent);stroke-width:2.2px;stroke-dasharray:5 3}.bw .whisker{fill:none;stroke:var(--ink);stroke-width:2.2px}.bw .whisker.fail{stroke:var(--fail)}.bw .hollow{fill:var(--sheet);stroke:var(--ink);stroke-width:2.5px}',
  '@media (prefers-reduced-motion:no-preference){.bw.moving .flow{animation:bw-flow 1.1s linear infinite}}@keyframes bw-flow{to{stroke-dashoffset:-28px}}',
  '@media print{.bw .flow{animation:none}}',
  '@media (forced-colors:active){.bw text{fill:CanvasText}.bw .balloon{fill:Canvas;stroke:CanvasText}}',
];

export const drawingCss = rules.join('\n');

/** For a drawing that stands alone in a file of its own. */
export const standaloneCss = `${tokenCss}\n${drawingCss}\n.bw{background:var(--sheet)}`;
