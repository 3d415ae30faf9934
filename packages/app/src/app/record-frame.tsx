import { type ReactNode, useMemo } from 'react';
import { useDevice } from '../offline/device-context.ts';
import { useRecordState } from '../offline/record-state.ts';
import { SheetContext, type SheetFrame } from '../ui/index.ts';

/** Every sheet shows who works here and where the record is; a visit puts its own title over it. */
export const RecordFrame = ({ children }: { readonly children: ReactNode }) => {
  const { session } = useDevice();
  const { state, counts } = useRecordState();
  const frame = useMemo(
    (): SheetFrame => ({
      title: { name: 'Brinewright', under: session.author },
      record: { state, counts, to: '/record' },
    }),
    [session.author, state, counts],
  );
  return <SheetContext value={frame}>{children}</SheetContext>;
};
