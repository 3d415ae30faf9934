import type { ReactNode } from 'react';

/** The one heading of a place; focus goes to it when the place is new. */
export const Heading = ({ children }: { readonly children: ReactNode }) => <h1 tabIndex={-1}>{children}</h1>;

export const Note = ({ children }: { readonly children: ReactNode }) => <p className="note">{children}</p>;

/** Words at the end of the line belong to the heading: what the marks below mean, how it was come by. */
export const Section = (props: {
  readonly title: string;
  readonly aside?: ReactNode;
  readonly children: ReactNode;
}) => (
  <section className="section">
    <div className="head-line">
      <h2>{props.title}</h2>
      {props.aside === undefined ? null : <span className="note">{props.aside}</span>}
    </div>
    {props.children}
  </section>
);
