const paths = {
  back: 'M15 5l-7 7 7 7',
  on: 'M5 12h13M12 5l7 7-7 7',
  tick: 'M4 12.5l5.5 5.5L20 6.5',
  plus: 'M12 4v16M4 12h16',
  minus: 'M4 12h16',
  cross: 'M6 6l12 12M18 6L6 18',
  find: 'M10.5 4a6.5 6.5 0 1 0 0 13a6.5 6.5 0 0 0 0-13zM15.5 15.5L21 21',
  photo: 'M3 8h4l2-3h6l2 3h4v11H3zM12 10a3.5 3.5 0 1 0 0 7a3.5 3.5 0 0 0 0-7z',
  clock: 'M12 4a8 8 0 1 0 0 16a8 8 0 0 0 0-16zM12 7v5l4 2',
} as const;

export type IconName = keyof typeof paths;

/** Always beside a word, but for back, plus, minus and photo, which carry their name in the button. */
export const Icon = ({ name }: { readonly name: IconName }) => (
  <svg className="icon" viewBox="0 0 24 24" aria-hidden="true">
    <path d={paths[name]} />
  </svg>
);
