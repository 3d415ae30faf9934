export const issuesEn = {} as const satisfies Record<string, string>;
