import type { Reply } from './answer-with.ts';

/**
 * Asks a worker, so that a page goes on answering its reader while something takes its time. A new question ends the
 * one before: the worker is closed with it, and its question is never answered.
 */
export function asking<Q, A>(open: () => Worker): (question: Q) => Promise<A> {
  let worker: Worker | undefined;
  let busy = false;
  return (question) => {
    if (busy) worker?.terminate();
    if (busy || !worker) worker = open();
    busy = true;
    const asked = worker;
    return new Promise((resolve, reject) => {
      asked.onmessage = ({ data }: MessageEvent<Reply<A>>) => {
        busy = false;
        if ('gives' in data) resolve(data.gives);
        else reject(new RangeError(data.refuses));
      };
      asked.onerror = () => reject(new Error('The computation did not load.'));
      asked.postMessage(question);
    });
  };
}
