/** The world as a command sees it, so that tests can give it another one. Paths are absolute. */
export type Io = {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  readonly cwd: string;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly readText: (path: string) => string;
  readonly readBase64: (path: string) => string;
  readonly writeText: (path: string, text: string) => void;
  /** ISO instant. */
  readonly now: () => string;
};
