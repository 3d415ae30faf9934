/** The world as a command sees it, so that tests can give it another one. Paths are absolute. */
export type Io = {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  readonly cwd: string;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly readText: (path: string) => string;
  readonly readBase64: (path: string) => string;
  /** Where a path leads once its links are followed, whether or not a file is there yet. */
  readonly realPath: (path: string) => string;
  readonly writeText: (path: string, text: string) => void;
  /** ISO instant. */
  readonly now: () => string;
  /** Resolves once somebody asks the program to stop; until then nobody waits for that. */
  readonly stopAsked: () => Promise<void>;
};
