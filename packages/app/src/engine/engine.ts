import type { Made } from './made.ts';
import { type MadeStep, Maker, type Ticks } from './maker.ts';
import type { Answer, Question, UnitInput, VisitInput } from './protocol.ts';
import { shippedTexts } from './shipped.ts';
import type { Source } from './source.ts';
import { type Speech, speechFor } from './speech.ts';
import { stageViews } from './stage-views.ts';
import { unitMade } from './unit-made.ts';
import { definitionsView } from './views/definitions-view.ts';
import { firstMinuteView } from './views/first-minute-view.ts';
import { frameView } from './views/frame-view.ts';
import { pailView } from './views/pail-view.ts';
import { paperView } from './views/paper-view.ts';
import { placesView } from './views/places-view.ts';
import { unitChoicesView } from './views/unit-choices-view.ts';
import { unitView } from './views/unit-view.ts';
import { whatIfView } from './views/what-if-view.ts';

type Reply = Answer extends infer Each ? (Each extends Answer ? Omit<Each, 'number'> : never) : never;

/** Answers questions from what is on the device; runs in the worker, and in tests. */
export class Engine {
  readonly #maker: Maker;
  readonly #source: Source;

  readonly #font: () => Promise<string | undefined>;

  /** `font` gives the typeface of papers as a data: address, where it can be had. */
  constructor(source: Source, font: () => Promise<string | undefined> = async () => undefined) {
    this.#font = font;
    this.#source = source;
    this.#maker = new Maker(source);
  }

  async *answer(question: Question, ticks: Ticks): AsyncGenerator<Reply, void> {
    const speech = speechFor(question.reader);
    switch (question.kind) {
      case 'places':
        yield { state: 'view', view: await this.#places(question.input.query, speech, ticks.now()) };
        break;
      case 'unit-choices':
        yield { state: 'view', view: await this.#unitChoices(question.input.stream, speech) };
        break;
      case 'pail':
        yield { state: 'view', view: pailView(speech, question.input.runs) };
        break;
      case 'frame':
        yield* this.#ofVisit(question.input, speech, ticks, frameView);
        break;
      case 'first-minute':
        yield* this.#ofVisit(question.input, speech, ticks, firstMinuteView);
        break;
      case 'paper': {
        const { paper, language, system } = question.input;
        const font = await this.#font();
        yield* this.#ofVisit(question.input, speech, ticks, (made) =>
          paperView(made, paper, { language, system }, font),
        );
        break;
      }
      case 'unit':
        yield await this.#unit(question.input, speech, ticks.now());
        break;
      case 'definitions': {
        const added = await this.#source.definitions();
        yield { state: 'view', view: definitionsView(shippedTexts, added, speech, question.input.family) };
        break;
      }
      case 'what-if': {
        const equipment = await this.#maker.equipment();
        yield { state: 'view', view: whatIfView(question.input.numbers, equipment, speech, ticks.now()) };
        break;
      }
      case 'stage': {
        const { stage, part } = question.input;
        yield* this.#ofVisit(question.input, speech, ticks, (made) => stageViews[stage](made, part));
        break;
      }
    }
    yield { state: 'settled' };
  }

  async #places(query: string, speech: Speech, now: string) {
    const [sites, equipment] = [await this.#maker.sites.all(), await this.#maker.equipment()];
    return placesView(sites, equipment.families.size, query, speech, now);
  }

  async #unitChoices(stream: string | undefined, speech: Speech) {
    return unitChoicesView(await this.#maker.sites.all(), await this.#maker.equipment(), stream, speech);
  }

  async #unit({ stream, conditioner }: UnitInput, speech: Speech, now: string): Promise<Reply> {
    const site = await this.#maker.sites.of(stream);
    const equipment = await this.#maker.equipment();
    const made = site === undefined ? undefined : unitMade(site, conditioner, equipment, speech, now);
    return made === undefined ? { state: 'missing' } : { state: 'view', view: unitView(made) };
  }

  async *#ofVisit(
    { stream, visit }: VisitInput,
    speech: Speech,
    ticks: Ticks,
    view: (made: Made) => unknown,
  ): AsyncGenerator<Reply, void> {
    for await (const step of this.#maker.make(stream, visit, speech, ticks)) yield replyOf(step, view);
  }
}

const replyOf = (step: MadeStep, view: (made: Made) => unknown): Reply =>
  step.state === 'made' ? { state: 'view', view: view(step.made) } : step;
