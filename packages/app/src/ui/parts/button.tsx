import type { ReactNode } from 'react';
import { Link } from 'wouter';

export type ButtonProps = {
  readonly kind?: 'main' | 'plain' | 'usual';
  readonly onPress?: (() => void) | undefined;
  /** Why it cannot be pressed now; said on the button itself, which stays in reach of the focus. */
  readonly blocked?: string | undefined;
  /** For a symbol alone: what it does. */
  readonly name?: string | undefined;
  readonly more?: string | undefined;
  readonly submits?: boolean;
  readonly children: ReactNode;
};

export const Button = (props: ButtonProps) => {
  const { kind = 'usual', onPress, blocked, name, more = '', submits = false, children } = props;
  const isBlocked = blocked !== undefined;
  return (
    <button
      type={submits && !isBlocked ? 'submit' : 'button'}
      className={`button ${kind} ${more}`.trim()}
      aria-disabled={isBlocked || undefined}
      aria-label={name}
      onClick={isBlocked ? undefined : onPress}
    >
      {isBlocked ? (
        <span>
          {children}
          <small>{blocked}</small>
        </span>
      ) : (
        children
      )}
    </button>
  );
};

/** Looks like a button and leads to a place. */
export const ButtonLink = (props: {
  readonly kind?: ButtonProps['kind'];
  readonly to: string;
  readonly children: ReactNode;
}) => (
  <Link href={props.to} className={`button ${props.kind ?? 'usual'}`}>
    {props.children}
  </Link>
);
