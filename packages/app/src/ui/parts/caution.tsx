import type { ReactNode } from 'react';
import { Button } from './button.tsx';
import { Icon } from './icon.tsx';

export type CautionProps = {
  /** Signal word and danger: 'Warning. The tank is under pressure.' */
  readonly signal: string;
  readonly text?: ReactNode;
  /** States the fact seen: 'Gauge reads 0 psi'. */
  readonly button?: {
    readonly text: string;
    readonly onPress: () => void;
    readonly blocked?: string | undefined;
  };
  /** What was seen and when; the stripe stays. */
  readonly done?: string | undefined;
};

export const Caution = ({ signal, text, button, done }: CautionProps) =>
  done === undefined ? (
    <div className="caution">
      <div className="caution-body">
        <p className="caution-signal">{signal}</p>
        {text}
        {button === undefined ? null : (
          <Button kind="main" onPress={button.onPress} blocked={button.blocked}>
            {button.text}
          </Button>
        )}
      </div>
    </div>
  ) : (
    <div className="caution done">
      <div className="caution-body">
        <Icon name="tick" />
        <span>{done}</span>
      </div>
    </div>
  );
