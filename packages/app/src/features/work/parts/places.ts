/** Parts of the work that are no operation. */
export const places = { list: 'all-operations', found: 'found-something' } as const;
