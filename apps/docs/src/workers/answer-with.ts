/** What a worker answers: a result, or why there is none. */
export type Reply<T> = { readonly gives: T } | { readonly refuses: string };

/** In a worker: answers each question with a function, and passes its refusals on. */
export function answerWith<Q, A>(compute: (question: Q) => A) {
  addEventListener('message', ({ data }: MessageEvent<Q>) => {
    try {
      postMessage({ gives: compute(data) } satisfies Reply<A>);
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      postMessage({ refuses: error.message } satisfies Reply<A>);
    }
  });
}
