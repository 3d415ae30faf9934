type Ending = {
  readonly server: { closeAllConnections(): void; closeIdleConnections(): void };
  close(): Promise<unknown>;
};

/** No new requests; those in flight are finished, unless they outlast the deadline. */
export const endServer = async (app: Ending, deadline: number): Promise<void> => {
  const timer = setTimeout(() => app.server.closeAllConnections(), deadline);
  try {
    await app.close();
  } finally {
    clearTimeout(timer);
  }
};
