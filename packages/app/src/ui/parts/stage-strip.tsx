import { useEffect, useRef } from 'react';
import { Link } from 'wouter';
import { useWord } from '../../app/words/use-word.ts';
import { Icon } from './icon.tsx';
import type { StageMark } from './sheet-frame.ts';

const stateWords = {
  open: 'app.ui.stage.open',
  begun: 'app.ui.stage.begun',
  done: 'app.ui.stage.done',
} as const;

export const StageStrip = ({ stages }: { readonly stages: readonly StageMark[] }) => {
  const word = useWord();
  return (
    <nav className="stages" aria-label={word('app.ui.stages')}>
      <ol>
        {stages.map((stage) => (
          <li key={stage.id}>
            <Stage stage={stage} said={word(stateWords[stage.state])} />
          </li>
        ))}
      </ol>
    </nav>
  );
};

const Stage = ({ stage, said }: { readonly stage: StageMark; readonly said: string }) => {
  const { number, name, state, isNow, to, minutes } = stage;
  const place = useRef<HTMLAnchorElement>(null);
  useEffect(() => {
    if (isNow) place.current?.scrollIntoView({ block: 'nearest', inline: 'center' });
  }, [isNow]);
  return (
    <Link ref={place} href={to} data-state={state} aria-current={isNow ? 'step' : undefined}>
      <span>{number}</span> <span className="stage-name">{name}</span>
      <span className="only-heard">{said}</span>
      {state === 'done' && minutes !== undefined ? (
        <span className="stage-minutes">
          <Icon name="tick" />
          {minutes}
        </span>
      ) : null}
    </Link>
  );
};
