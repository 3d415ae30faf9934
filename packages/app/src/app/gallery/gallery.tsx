import type { ReactNode } from 'react';
import { ActionParts, AnswerParts, ReadingParts } from './parts-asked.tsx';
import { StateParts, WorkParts } from './parts-shown.tsx';

/** Every part in its states, for holding beside the sheet of parts; only in development builds. */
export const Gallery = () => (
  <div className="gallery">
    <h1 tabIndex={-1}>Components and their states</h1>
    <div className="gallery-columns">
      <ActionParts />
      <AnswerParts />
      <ReadingParts />
      <WorkParts />
      <StateParts />
    </div>
  </div>
);

export const Cell = ({ name, children }: { readonly name: string; readonly children: ReactNode }) => (
  <section className="gallery-cell">
    <h2>{name}</h2>
    {children}
  </section>
);
