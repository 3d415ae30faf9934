/** The two databases behind one set of queries. */
export type Flavour = 'sqlite' | 'postgres';
