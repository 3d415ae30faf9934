export const proofEn = {} as const satisfies Record<string, string>;
