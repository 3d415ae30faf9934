/** Where the app lies: '/own/app/' on the workshop's server; known from the address the page was given. */
export type Place = {
  /** Under which routes lie, without the last stroke: '/own/app', or '' at the root. */
  readonly base: string;
  /** '/own/api'. */
  readonly api: string;
  /** A database for each workshop of one server. */
  readonly database: string;
};

export const placeOf = (baseAddress: string): Place => {
  const base = new URL(baseAddress).pathname.replace(/\/$/u, '');
  const prefix = base.replace(/\/app$/u, '');
  return { base, api: `${prefix}/api`, database: `brinewright${prefix.replaceAll('/', '-')}` };
};
