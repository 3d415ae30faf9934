/** Lets one call of many fail: the n-th, once. */
export class NthFailure {
  #calls = 0;
  #at: number | undefined;
  #hasFailed = false;

  /** Counts from one again; without a number nothing fails. */
  arm(at?: number): void {
    this.#calls = 0;
    this.#at = at;
    this.#hasFailed = false;
  }

  get hasFailed(): boolean {
    return this.#hasFailed;
  }

  /** Called at each call that might fail; says whether this one does. */
  isNow(): boolean {
    this.#calls += 1;
    if (this.#calls !== this.#at) return false;
    this.#hasFailed = true;
    return true;
  }
}

/** What the failing call throws. */
export class MeantToFail extends Error {
  override readonly name = 'MeantToFail';
}
