import { useState } from 'react';
import { useWord } from '../../../app/words/use-word.ts';
import type { StageProps } from '../../../engine/stage-props.ts';
import type { ProgramView } from '../../../engine/views/program-view.ts';
import { undoOf } from '../../../offline/undo.ts';
import { settingsWritten, type TypedSettings } from '../commands/settings.ts';
import { SettingsForm } from '../parts/settings-form.tsx';
import { ProgramSheet } from './program-sheet.tsx';
import '../program.css';

type Props = StageProps<ProgramView>;

/** The program stage: the sheet itself, the settings as found, or what was really set. */
export const ProgramScreen = (props: Props) => {
  const { view, about, record, nav } = props;
  const word = useWord();
  const [undoable, setUndoable] = useState<readonly string[]>([]);
  const write = async (drafts: Parameters<Props['record']>[0]): Promise<void> => {
    if (drafts.length > 0) setUndoable(await record(drafts));
  };
  const undo = async (): Promise<void> => {
    await record(undoOf(about.stream, undoable, word('app.program.undo')));
    setUndoable([]);
  };
  const form = (kind: 'setting-found' | 'setting-set') => ({
    draft: `${about.visit} ${kind}`,
    fields: view.fields,
    onKeep: (typed: TypedSettings) => write(settingsWritten(about, kind, view.fields, typed)),
    onLeave: () => nav.toPart(undefined),
  });
  if (nav.part === 'found')
    return (
      <SettingsForm
        {...form('setting-found')}
        title={word('app.program.found-title')}
        under={word('app.program.found-under')}
        keep={word('app.program.found-keep')}
        initial={typedAs(view, ['found'])}
      />
    );
  if (nav.part === 'set')
    return (
      <SettingsForm
        {...form('setting-set')}
        title={word('app.program.set-title')}
        under={word('app.program.set-under')}
        keep={word('app.program.set-keep')}
        initial={typedAs(view, ['set', 'advised'])}
      />
    );
  return <ProgramSheet {...props} write={write} undo={undoable.length > 0 ? undo : undefined} />;
};

/** What each field begins with: the first of these that is known. */
const typedAs = ({ fields }: ProgramView, from: readonly ('found' | 'set' | 'advised')[]): TypedSettings =>
  Object.fromEntries(
    fields.flatMap((field) => {
      const typed = from.map((name) => field[name]).find((one) => one !== undefined);
      return typed === undefined ? [] : [[field.name, typed] as const];
    }),
  );
