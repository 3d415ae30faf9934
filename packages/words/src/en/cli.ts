export const cliEn = {} as const satisfies Record<string, string>;
