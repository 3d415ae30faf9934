import { useId } from 'react';

export type ProgressProps = {
  /** What is being done, with its count: 'Working out the odds, 12 of 23 faults'. */
  readonly text: string;
  /** How far, 0 to 1. */
  readonly share: number;
  readonly under?: string | undefined;
};

export const Progress = ({ text, share, under }: ProgressProps) => {
  const id = useId();
  const percent = `${Math.round(Math.min(1, Math.max(0, share)) * 100)}%`;
  return (
    <div aria-live="polite">
      <p>{text}</p>
      <svg className="progress" aria-hidden="true">
        <defs>
          <Hatch id={id} />
        </defs>
        <rect className="progress-done" width={percent} height="100%" />
        <rect width={percent} height="100%" fill={`url(#${id})`} />
        <rect className="progress-frame" width="100%" height="100%" />
      </svg>
      {under === undefined ? null : <p className="note">{under}</p>}
    </div>
  );
};

export const Hatch = ({ id }: { readonly id: string }) => (
  <pattern id={id} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
    <path className="odds-hatch" d="M0 0V5" />
  </pattern>
);
