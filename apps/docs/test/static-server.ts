import { existsSync, readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';

const types: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
};

/** A plain server of files, whose folder can be changed while it serves, as by a new release. */
export async function serveFiles(folder: string) {
  const state = { folder, asked: 0 };
  const server = createServer((request, response) => {
    state.asked++;
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    const path = join(state.folder, pathname);
    const file = existsSync(path) && statSync(path).isDirectory() ? join(path, 'index.html') : path;
    const found = existsSync(file);
    const sent = found ? file : join(state.folder, '404.html');
    response.writeHead(found ? 200 : 404, {
      'content-type': types[extname(sent)] ?? 'application/octet-stream',
      vary: 'Origin',
    });
    response.end(readFileSync(sent));
  });
  await new Promise<void>((resolve) => {
    server.listen(0, '127.0.0.1', resolve);
  });
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    /** How often it was asked for a file. */
    asked: () => state.asked,
    serve: (other: string) => {
      state.folder = other;
    },
    stop: () =>
      new Promise((resolve) => {
        server.close(resolve);
        server.closeAllConnections();
      }),
  };
}
