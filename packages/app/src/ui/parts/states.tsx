import type { ReactNode } from 'react';
import { Icon } from './icon.tsx';

type Inside = { readonly children: ReactNode };

/** What is in hand: a frame of cut weight with its label in the top line. */
export const InHand = ({ tag, children }: Inside & { readonly tag: string }) => (
  <section className="in-hand" aria-label={tag}>
    <span className="in-hand-tag">{tag}</span>
    {children}
  </section>
);

/** A question or a doubt beside the work. */
export const Notice = (props: {
  readonly title?: string | undefined;
  readonly children?: ReactNode;
  readonly actions?: ReactNode;
}) => (
  <div className="notice">
    {props.title === undefined ? null : <b>{props.title}</b>}
    {props.children === undefined ? null : <div className="note">{props.children}</div>}
    {props.actions === undefined ? null : <div className="buttons">{props.actions}</div>}
  </div>
);

/** What happened, where, why, and what mends it. */
export const Problem = (props: {
  readonly what: string;
  readonly where?: string | undefined;
  readonly why?: string | undefined;
  readonly mend?: ReactNode;
}) => (
  <div className="problem" role="alert">
    <b>{props.what}</b>
    <p className="note">{[props.where, props.why].filter((text) => text !== undefined).join(' ')}</p>
    {props.mend === undefined ? null : <div className="buttons">{props.mend}</div>}
  </div>
);

export const Empty = (props: {
  readonly title: string;
  readonly under?: string | undefined;
  readonly drawing?: ReactNode;
  readonly action?: ReactNode;
}) => (
  <div className="empty">
    {props.drawing}
    <b>{props.title}</b>
    {props.under === undefined ? null : <p className="note">{props.under}</p>}
    {props.action}
  </div>
);

/** A plain fact with a tick. */
export const Told = ({ children }: Inside) => (
  <p className="line-note">
    <Icon name="tick" />
    <span>{children}</span>
  </p>
);
