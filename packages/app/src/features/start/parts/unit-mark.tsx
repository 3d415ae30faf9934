/** Whether a unit has a brine tank, at a glance; the words beside it say the same. */
export const UnitMark = ({ kind }: { readonly kind: 'softener' | 'filter' | undefined }) => (
  <svg className="sketch" viewBox="0 0 84 96" aria-hidden="true">
    {kind === 'softener' ? <BrineTank /> : null}
    <path className="body" d="M12 88V32c0-5 3-9 8-9h4c5 0 8 4 8 9v56z" />
    <path className="body" d="M14 11h16v10H14zM9 82h26v7H9z" />
    <path className="fine" d="M12 50h20" />
    {beads.map(([x, y]) => (
      <circle key={`${x} ${y}`} className="bead" cx={x} cy={y} r="1.9" />
    ))}
    <path className="ground" d="M2 90h80" />
  </svg>
);

const beads = [56, 63, 70, 77].flatMap((y, row) =>
  [17, 22, 27].map((x) => [x + (row % 2 === 0 ? 0 : 2), y] as const),
);

const BrineTank = () => (
  <>
    <path className="brine" d="M51 76h21l-1 13H52z" />
    <path className="edge" d="M49 51l3 38h19l3-38z" />
    <path className="body" d="M47 46h29v5H47z" />
    <path className="fine" d="M30 16h30v30" />
    <circle className="brine-dot" cx="56" cy="81" r="1.3" />
    <circle className="brine-dot" cx="62" cy="85" r="1.3" />
    <circle className="brine-dot" cx="68" cy="81" r="1.3" />
  </>
);
