import { type Assessment, type StageName, type Stages, stageNames, type Visit } from '@brinewright/service';
import { english, formatMessage, type Message, type Reader } from '@brinewright/words';

/** The assessment as plain JSON, with every sentence of each stage in the reader's language. */
export const assessmentBody = (visit: Visit, assessment: Assessment, reader: Reader): object => {
  const view = { ...reader, currency: visit.site.prices?.currency };
  const { stages, ...rest } = assessment;
  const bodies = stageNames.map((name) => [name, stageBody(stages, name)] as const);
  return {
    visit: visit.id,
    ...rest,
    stages: Object.fromEntries(bodies),
    says: Object.fromEntries(bodies.map(([name, body]) => [name, saidIn(body, view)])),
  };
};

const stageBody = (stages: Stages, name: StageName): object => {
  const { figures: _, ...stage } = stages[name];
  if (!('value' in stage)) return stage;
  const value = name === 'situation' ? situationIds(stages.situation) : plain(stage.value);
  return { ...stage, value };
};

/** Equipment and readings stand elsewhere whole; here are their ids. */
const situationIds = (stage: Stages['situation']): object => {
  if (!('value' in stage)) return {};
  const { family, kind, subject, described, controller, medium } = stage.value;
  return {
    family: family.id,
    kind,
    subject: subject.id,
    described,
    controller: controller?.id ?? null,
    medium: medium?.id ?? null,
  };
};

/** Typed arrays become lists; everything else is plain already. */
const plain = (value: unknown): unknown => {
  if (value instanceof Float64Array) return [...value];
  if (Array.isArray(value)) return value.map(plain);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, plain(inner)]));
};

/** Every sentence, once, in the order in which it stands. */
const saidIn = (body: unknown, reader: Reader): readonly string[] => {
  const said = new Set<string>();
  const walk = (value: unknown): void => {
    if (isMessage(value)) said.add(formatMessage(value, reader));
    else if (typeof value === 'object' && value !== null)
      for (const inner of Object.values(value)) walk(inner);
  };
  walk(body);
  return [...said];
};

const isMessage = (value: unknown): value is Message =>
  typeof value === 'object' &&
  value !== null &&
  'key' in value &&
  typeof value.key === 'string' &&
  Object.hasOwn(english, value.key);
