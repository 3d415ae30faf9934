type Listening = {
  listen(options: { readonly host: string; readonly port: number }): Promise<string>;
  readonly server: { address(): string | { readonly port: number } | null };
};

/** How many ports are tried after the one that was asked for. */
const mostMoves = 50;

/** Listens on the port, or where it is in use and may be left, on the next free one; says which it became. */
export const listenOn = async (
  server: Listening,
  host: string,
  port: number,
  mayMove: boolean,
): Promise<number> => {
  for (let moved = 0; ; moved += 1) {
    try {
      await server.listen({ host, port: port === 0 ? 0 : port + moved });
      const address = server.server.address();
      return typeof address === 'object' && address !== null ? address.port : port;
    } catch (error) {
      if (!mayMove || moved >= mostMoves || port + moved >= 65_535 || !isInUse(error)) throw error;
    }
  }
};

const isInUse = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && error.code === 'EADDRINUSE';

/** What fails in the background is tried again at its next turn. */
export const noFallback = (): void => {};
