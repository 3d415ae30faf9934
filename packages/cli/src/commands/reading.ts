import { resolve } from 'node:path';
import { type Equipment, readYaml } from '@brinewright/equipment';
import { loadEquipment } from '@brinewright/equipment/load-files';
import { parseVisit, type Visit } from '@brinewright/service';
import { type Issue, message, type Path, type Place } from '@brinewright/words';
import { type Call, complain, printJson } from '../call.ts';
import { capital, hanging } from '../text/lines.ts';
import { formatIssue, plainIssue } from './format-issue.ts';
import { isDefinition, toldOfVisit } from './visit-issue.ts';

/** The text of a file, or nothing and a sentence why not. */
export const readFile = (call: Call, path: string): string | undefined => {
  try {
    return call.io.readText(resolve(call.io.cwd, path));
  } catch (error) {
    if (!isSystemError(error)) throw error;
    const key = error.code === 'ENOENT' ? 'issue.file.missing' : 'issue.file.unreadable';
    complain(call, message(key, { file: path }), message(`${key}.mend`));
    return undefined;
  }
};

export const isSystemError = (error: unknown): error is Error & { readonly code: string } =>
  error instanceof Error && 'code' in error && typeof error.code === 'string';

/** Shipped definitions and the caller's own, or nothing and what is wrong with them. */
export const readEquipment = (call: Call): Equipment | undefined => {
  const loaded = loadEquipment(call.equipment);
  if (loaded.ok) return loaded.value.equipment;
  tellIssues(
    call,
    loaded.issues.filter(({ severity }) => severity === 'error'),
    new Map(),
    true,
  );
  return undefined;
};

export type VisitRead = {
  readonly visit: Visit;
  readonly placeOf: (path: Path) => Place | undefined;
  /** What is wrong with the document and was set aside. */
  readonly issues: readonly Issue[];
};

/** The visit at a path, as far as it can be read; what is wrong with it is said. */
export const readVisit = (call: Call, path: string): VisitRead | undefined => {
  const text = readFile(call, path);
  if (text === undefined) return undefined;
  const yaml = readYaml(path, text);
  if (isDefinition(yaml.data)) {
    complain(
      call,
      message('cli.visit.is-definition', { file: path }),
      message('cli.visit.is-definition.mend'),
    );
    return undefined;
  }
  const parsed = parseVisit(path, text);
  const issues = parsed.issues.map(toldOfVisit);
  const faulty = issues.some(({ severity }) => severity === 'error');
  if (!parsed.ok || faulty) tellIssues(call, issues, new Map([[path, text]]), !parsed.ok);
  if (!parsed.ok) return undefined;
  if (faulty) complain(call, message('cli.set-aside'));
  return {
    visit: parsed.value,
    issues: faulty ? issues : [],
    placeOf: (at) => ('data' in yaml ? yaml.locate(at) : undefined),
  };
};

/** What is wrong, to people on the side; with --json, where nothing else will be printed, as data too. */
export const tellIssues = (
  call: Call,
  issues: readonly Issue[],
  sources: ReadonlyMap<string, string>,
  isLast: boolean,
): void => {
  const { language } = call.speech.reader;
  if (call.json && isLast) printJson(call, { issues: issues.map((issue) => plainIssue(issue, language)) });
  for (const issue of issues) call.io.err(`${formatIssue(issue, sources, language)}\n`);
};

/** An issue as one paragraph, for what has no file to point into. */
export const issueParagraph = (call: Call, { severity, message: what, mend }: Issue): string[] => {
  const { speech } = call;
  const how = mend === undefined ? '' : ` ${speech.say(mend)}`;
  return hanging('', `${capital(speech.word(`equipment.severity.${severity}`))}: ${speech.say(what)}${how}`);
};
