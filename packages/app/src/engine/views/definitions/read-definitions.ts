import { type Compiled, compileDefinitions, type Parsed, parseDefinition } from '@brinewright/equipment';
import type { Issue } from '@brinewright/words';
import type { DefinitionText } from '../../source.ts';

/** What is used of all definition files, and what is wrong with those that were added. */
export type DefinitionSet = {
  readonly compiled: Compiled;
  readonly issues: readonly Issue[];
  /** Files that are not used, because something in them or with them is wrong. */
  readonly leftOut: readonly string[];
  /** Families that come from an added file. */
  readonly own: readonly string[];
};

/** Added files one by one upon the shipped ones: a faulty file never takes a sound one with it. */
export const readDefinitions = (
  shipped: readonly DefinitionText[],
  added: readonly DefinitionText[],
): DefinitionSet => {
  let parsed = parsedOf(shipped);
  let compiled = compiledOf(parsed);
  const issues: Issue[] = [];
  const leftOut: string[] = [];
  const own: string[] = [];
  for (const file of added) {
    const more = parseDefinition(file.name, file.text);
    const next = compileDefinitions([...parsed, more]);
    issues.push(...next.issues.filter(({ place }) => place?.file === file.name));
    if (next.ok) {
      own.push(
        ...[...next.value.equipment.families.keys()].filter((id) => !compiled.equipment.families.has(id)),
      );
      parsed = [...parsed, more];
      compiled = next.value;
    } else leftOut.push(file.name);
  }
  return { compiled, issues, leftOut, own };
};

const parsedOf = (texts: readonly DefinitionText[]): readonly Parsed[] =>
  texts.map(({ name, text }) => parseDefinition(name, text));

const compiledOf = (parsed: readonly Parsed[]): Compiled => {
  const compiled = compileDefinitions(parsed);
  if (!compiled.ok) throw new Error(`shipped definitions: ${compiled.issues[0]?.code ?? ''}`);
  return compiled.value;
};
