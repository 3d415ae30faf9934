/** Sizes in bytes, times in milliseconds. */
export const sizes = {
  /** A message of the API: 500 entries of usual length fit many times over. */
  message: 16 * 1024 * 1024,
  /** A written visit or a definition. */
  document: 1024 * 1024,
  /** A whole record brought in one piece. */
  bundle: 256 * 1024 * 1024,
  /** A photo, a signature, a definition. */
  file: 32 * 1024 * 1024,
} as const;

export type Times = {
  /** For a whole request to arrive. */
  readonly request: number;
  readonly headers: number;
  /** A connection on which nothing moves. */
  readonly idle: number;
  readonly keepAlive: number;
  /** How often slow requests are looked for. */
  readonly check: number;
  /** For requests in flight when the server is asked to end. */
  readonly deadline: number;
  /** Between two signs of life to who listens for news. */
  readonly heartBeat: number;
};

export const usualTimes: Times = {
  request: 120_000,
  headers: 15_000,
  idle: 60_000,
  keepAlive: 2_000,
  check: 5_000,
  deadline: 8_000,
  heartBeat: 20_000,
};

/** Requests a minute from one address. */
export const rates = { loopback: 6_000, lan: 1_200 } as const;
