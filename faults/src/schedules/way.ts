import type {
  OfferReply,
  PullReply,
  PullRequest,
  PushReply,
  PushRequest,
  Reply,
  Transport,
} from '@brinewright/journal';
import type { Random } from '../random.ts';
import type { SimDevice } from './sim-device.ts';
import type { Reached } from './states.ts';
import type { Watch } from './watch.ts';

/** What goes wrong on one trip to the server; calls are counted from one. */
export type Trouble =
  | { readonly kind: 'none' }
  | { readonly kind: 'request-lost' | 'reply-lost' | 'turned-away'; readonly call: number }
  /** The first page that has another behind it is the last that arrives. */
  | { readonly kind: 'cut-between-pages' }
  | { readonly kind: 'killed-before-pull' }
  /** The device dies at this write of taking a page. */
  | { readonly kind: 'crash-in-page'; readonly write: number };

export type WayOptions = {
  readonly inner: Transport;
  readonly device: SimDevice;
  readonly trouble: Trouble;
  readonly isRough: boolean;
  readonly random: Random;
  readonly reached: Reached;
  readonly watch: Watch;
  /** Messages that are still under way when all is over. */
  readonly late: (() => Promise<unknown>)[];
};

/** A way to the server on which messages are lost, come twice, late, or overtake one another. */
export class Way implements Transport {
  readonly #options: WayOptions;
  #calls = 0;
  #acknowledged = 0;
  #pages = 0;
  #isCut = false;

  constructor(options: WayOptions) {
    this.#options = options;
  }

  push(request: PushRequest): Promise<Reply<PushReply>> {
    return this.#call(
      async () => {
        const reply = await this.#pushRoughly(request);
        if (reply.state === 'answered') await this.#sawVerdicts(request, reply.value);
        return reply;
      },
      ({ verdicts }) => verdicts.some(({ state }) => state === 'kept'),
    );
  }

  async pull(request: PullRequest): Promise<Reply<PullReply>> {
    const { trouble, device, reached, watch } = this.#options;
    if (this.#isCut || (trouble.kind === 'killed-before-pull' && this.#acknowledged > 0)) {
      if (this.#pages === 0 && this.#acknowledged > 0)
        reached.mark('acknowledged and killed before the pull');
      return noAnswer;
    }
    const reply = await this.#call(() => this.#options.inner.pull(request));
    if (reply.state !== 'answered') return reply;
    this.#pages += 1;
    await watch.sawPage(device, reply.value.entries);
    if (trouble.kind === 'crash-in-page' && reply.value.entries.length > 0) device.dieAfter(trouble.write);
    if (trouble.kind === 'cut-between-pages' && reply.value.more) {
      this.#isCut = true;
      reached.mark('cut between pages');
    }
    return reply;
  }

  offer(request: Parameters<Transport['offer']>[0]): Promise<Reply<OfferReply>> {
    return this.#call(() => this.#options.inner.offer(request));
  }

  sendFile: Transport['sendFile'] = async () => noAnswer;
  fetchFile: Transport['fetchFile'] = async () => noAnswer;

  async #call<T>(
    send: () => Promise<Reply<T>>,
    hasDone: (value: T) => boolean = () => false,
  ): Promise<Reply<T>> {
    const { trouble, reached, random, isRough, late } = this.#options;
    this.#calls += 1;
    const isNow = 'call' in trouble && trouble.call === this.#calls;
    if (isNow && trouble.kind === 'turned-away') {
      reached.mark('session ended');
      return { state: 'not-allowed' };
    }
    if (isNow && trouble.kind === 'request-lost') {
      reached.mark('request lost');
      if (random.between(1, 3) === 1) late.push(send);
      return noAnswer;
    }
    if (isRough && random.between(1, 4) === 1) {
      await send();
      reached.mark('delivered twice');
    }
    if (isRough && random.between(1, 4) === 1) late.push(send);
    const reply = await send();
    if (!isNow || trouble.kind !== 'reply-lost') return reply;
    if (reply.state === 'answered' && hasDone(reply.value)) reached.mark('reply lost after commit');
    return noAnswer;
  }

  /** Of two halves of a push the second may arrive first. */
  async #pushRoughly({ entries }: PushRequest): Promise<Reply<PushReply>> {
    const { inner, isRough, random, reached } = this.#options;
    if (!isRough || entries.length < 2 || random.between(1, 2) === 1) return inner.push({ entries });
    const half = random.between(1, entries.length - 1);
    const last = await inner.push({ entries: entries.slice(half) });
    const first = await inner.push({ entries: entries.slice(0, half) });
    if (last.state !== 'answered' || first.state !== 'answered') return noAnswer;
    reached.mark('messages overtook one another');
    const verdicts = [...first.value.verdicts, ...last.value.verdicts];
    return { state: 'answered', value: { ...first.value, verdicts } };
  }

  async #sawVerdicts({ entries }: PushRequest, { verdicts }: PushReply): Promise<void> {
    this.#acknowledged += verdicts.filter(({ state }) => state === 'kept').length;
    await this.#options.watch.sawVerdicts(this.#options.device, entries, verdicts);
  }
}

const noAnswer = { state: 'no-answer' } as const;
