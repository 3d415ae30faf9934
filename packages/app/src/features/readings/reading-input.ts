/** What was read: a quantity as text, with its uncertainty where it is not that of the usual instrument; or a state. */
export type ReadingInput =
  | { readonly value: string; readonly u?: string | undefined }
  | { readonly state: string };

/** As an entry holds it, at the moment it was read. */
export const writtenReading = (input: ReadingInput, at: string): Readonly<Record<string, string>> => {
  if ('state' in input) return { state: input.state, at };
  return { value: input.value, ...(input.u === undefined ? {} : { u: input.u }), at };
};
