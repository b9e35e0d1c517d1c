import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { posix, win32 } from 'node:path';
import { chromium } from 'playwright';

/** Flags for a test browser: no sandbox (it cannot be had in every container), no graphics card, no calls home. */
export const chromiumFlags = [
  '--no-sandbox',
  '--disable-gpu',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** What the search needs to know of the machine it runs on. */
export interface Machine {
  readonly platform: NodeJS.Platform;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** Whether system packages may be installed. */
  readonly isRoot: boolean;
  exists(path: string): boolean;
  /** Whether a program ran and ended well. */
  runs(program: string, args: readonly string[]): boolean;
  /** Where Playwright keeps its own browser, there or not. */
  playwrightPath(): string | null;
}

const thisMachine: Machine = {
  platform: process.platform,
  env: process.env,
  isRoot: process.getuid?.() === 0,
  exists: existsSync,
  runs: (program, args) =>
    spawnSync(program, args, { stdio: 'ignore', shell: process.platform === 'win32' }).status === 0,
  playwrightPath: () => {
    try {
      return chromium.executablePath();
    } catch {
      return null; // Playwright has no browser for this platform.
    }
  },
};

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];

function systemPaths({ platform, env }: Machine): string[] {
  if (platform === 'win32') {
    return [env.PROGRAMFILES, env['PROGRAMFILES(X86)'], env.LOCALAPPDATA].flatMap((folder) =>
      folder
        ? [
            win32.join(folder, 'Google', 'Chrome', 'Application', 'chrome.exe'),
            win32.join(folder, 'Chromium', 'Application', 'chrome.exe'),
          ]
        : [],
    );
  }
  const onPath = (env.PATH ?? '')
    .split(posix.delimiter)
    .flatMap((folder) => (folder ? names.map((name) => posix.join(folder, name)) : []));
  if (platform !== 'darwin') return onPath;
  const apps = ['/Applications', ...(env.HOME ? [posix.join(env.HOME, 'Applications')] : [])];
  return [
    ...onPath,
    ...apps.flatMap((folder) => [
      posix.join(folder, 'Chromium.app/Contents/MacOS/Chromium'),
      posix.join(folder, 'Google Chrome.app/Contents/MacOS/Google Chrome'),
    ]),
  ];
}

function search(machine: Machine): string | undefined {
  const own = machine.playwrightPath();
  return [...systemPaths(machine), ...(own === null ? [] : [own])].find(
    // Some Linux systems ship a script of that name that only says how to install the browser.
    (path) => machine.exists(path) && (machine.platform !== 'linux' || machine.runs(path, ['--version'])),
  );
}

/** Ways to install a Chromium; each waits for another install that is under way. */
function* installs({ isRoot, exists, runs }: Machine): Generator<boolean> {
  if (isRoot && exists('/usr/bin/apt-get')) {
    const wait = ['-o', 'DPkg::Lock::Timeout=300', '-qq'];
    yield runs('apt-get', [...wait, 'update']) &&
      runs('apt-get', [...wait, 'install', '--yes', '--no-install-recommends', 'chromium']);
  }
  yield runs('npx', ['playwright', 'install', 'chromium']);
}

/**
 * Finds a Chromium for browser tests: the one that CHROMIUM_PATH names, one of the system, or Playwright's own.
 * Where there is none it tries to install one.
 *
 * @returns The path of its executable.
 * @throws Error in one sentence where there is none and none could be installed.
 */
export function findChromium(machine: Machine = thisMachine): string {
  const named = machine.env.CHROMIUM_PATH;
  if (named) {
    if (machine.exists(named)) return named;
    throw new Error(`CHROMIUM_PATH names ${named}, and there is no such file.`);
  }
  const found = search(machine);
  if (found) return found;
  for (const installed of installs(machine)) {
    const path = installed && search(machine);
    if (path) return path;
  }
  throw new Error(
    'The browser tests need a Chromium: install one (apt-get install chromium, or npx playwright install chromium) or set CHROMIUM_PATH.',
  );
}
