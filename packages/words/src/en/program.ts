export const programEn = {} as const satisfies Record<string, string>;
