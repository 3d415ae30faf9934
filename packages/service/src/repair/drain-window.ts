import { type Message, type MessageValue, message } from '@brinewright/words';
import type { Figures } from '../derivation/figure.ts';
import type { BackwashWindow } from '../program/program-advice.ts';
import type { Target } from '../recognition/recognition.ts';
import type { Situation } from '../situation/situation.ts';
import { stockIds } from '../stock-ids.ts';

const role = stockIds.roles.drainControl;

/** What the backwash window asks of the drain control: another one, one that nobody makes, or nothing. */
export type DrainVerdict =
  | { readonly asks: 'nothing' }
  | { readonly asks: 'change'; readonly control: string }
  | { readonly asks: 'none-fits' };

/** A make nobody has described has no controls to choose from. */
export const drainVerdict = (s: Situation, window: BackwashWindow | undefined): DrainVerdict => {
  if (window === undefined || !s.described || s.family.controls.drain.length === 0)
    return { asks: 'nothing' };
  if (window.state === 'empty') return { asks: 'none-fits' };
  if (window.fits === 'unknown' ? window.choice !== undefined : !window.clearly) return { asks: 'nothing' };
  return window.choice === undefined ? { asks: 'none-fits' } : { asks: 'change', control: window.choice };
};

const isReplaced = (targets: readonly Target[]): boolean =>
  targets.some((target) => target.kind === 'replace' && target.role === role);

/** Another drain control goes with other work, or where nothing else is wrong; it never hides a fault still sought. */
export const withDrainControl = (
  s: Situation,
  targets: readonly Target[],
  window: BackwashWindow | undefined,
): readonly Target[] => {
  const asked = drainVerdict(s, window).asks === 'change' && (targets.length > 0 || isQuiet(s));
  return asked && !isReplaced(targets) ? [{ kind: 'replace', role }, ...targets] : targets;
};

/** Nobody complained and nothing was changed. */
const isQuiet = ({ visit, complaints, changes }: Situation): boolean =>
  visit.complaint === undefined && complaints.length === 0 && changes.length === 0;

/** The drain control to be fitted by id: what the bed asks for, else what the unit has; none where none fits. */
export const drainToFit = (s: Situation, window: BackwashWindow | undefined): string | undefined => {
  if (drainVerdict(s, window).asks === 'none-fits') return undefined;
  return (window?.state === 'open' ? window.choice : undefined) ?? s.subject.fitted?.drain;
};

/** The drain control is to be renewed and none of the family gives this bed what it needs: none is adapted. */
export const drainRefusals = (
  s: Situation,
  targets: readonly Target[],
  window: BackwashWindow | undefined,
  figures: Figures,
): readonly Message[] => {
  if (window === undefined || drainVerdict(s, window).asks !== 'none-fits' || !isReplaced(targets)) return [];
  return [window.state === 'empty' ? noWindow(window.why) : noControl(window, figures)];
};

const noWindow = (why: Message): Message => message('repair.no-drain-window', { why });

const noControl = (window: BackwashWindow, figures: Figures): Message =>
  message('repair.no-drain-control', limitsOf(window, figures));

/** Why the control is changed, in one sentence with the window. */
export const drainAdvice = (
  s: Situation,
  targets: readonly Target[],
  window: BackwashWindow | undefined,
  figures: Figures,
): readonly Message[] => {
  const verdict = drainVerdict(s, window);
  if (window?.state !== 'open' || verdict.asks !== 'change' || !isReplaced(targets)) return [];
  const control = s.family.controls.drain.find(({ id }) => id === verdict.control)?.title ?? verdict.control;
  const fitted = figures[window.fitted ?? '']?.quantity;
  return fitted === undefined
    ? []
    : [message('repair.drain-control', { fitted, control, ...limitsOf(window, figures) })];
};

const limitsOf = ({ floor, ceiling }: BackwashWindow, figures: Figures): Record<string, MessageValue> => ({
  floor: figures[floor]?.quantity ?? floor,
  ceiling: figures[ceiling]?.quantity ?? ceiling,
});
