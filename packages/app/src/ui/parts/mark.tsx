/** Our sign: a round bed in section, hatched on one side of its axis. */
export const Mark = () => (
  <svg className="sketch" viewBox="0 0 40 40" width="40" height="40" aria-hidden="true">
    <path className="edge" d="M20 4a16 16 0 1 0 0 32a16 16 0 0 0 0-32z" strokeWidth="2.5" />
    <path className="edge" d="M20 13a7 7 0 1 0 0 14a7 7 0 0 0 0-14z" />
    <path className="fine" d="M22 11l7-5M26 15l8-6M27 19l9-7M27 23l9-7M25 28l10-8M22 33l12-9" />
    <path className="accent" d="M20 1v38" strokeDasharray="7 2 2 2" />
  </svg>
);
