import { execFileSync } from 'node:child_process';
import { describe, expect, test } from 'vitest';
import { chromiumFlags, findChromium, type Machine } from '../../scripts/chromium.ts';

const PLAYWRIGHT = '/cache/playwright/chrome';

/** A machine with these files; `installable` appears when the command given for it runs. */
function machine({
  files = [],
  broken = [],
  installable = {},
  ...rest
}: {
  files?: string[];
  broken?: string[];
  installable?: Record<string, string>;
} & Partial<Machine>): Machine & { commands: string[] } {
  const present = new Set(files);
  const commands: string[] = [];
  return {
    platform: 'linux',
    env: { PATH: '/usr/local/bin:/usr/bin' },
    isRoot: false,
    exists: (path) => present.has(path),
    runs: (program, args) => {
      if (args[0] === '--version') return !broken.includes(program);
      const command = [program, ...args.filter((arg) => !arg.startsWith('-') && !arg.includes('='))].join(
        ' ',
      );
      commands.push(command);
      const path = installable[command];
      if (path) present.add(path);
      return path !== undefined || command === 'apt-get update';
    },
    playwrightPath: () => PLAYWRIGHT,
    commands,
    ...rest,
  };
}

describe('a Chromium for the browser tests', () => {
  test('is first the one that CHROMIUM_PATH names', () => {
    const env = { PATH: '/usr/bin', CHROMIUM_PATH: '/opt/mine' };
    expect(findChromium(machine({ env, files: ['/opt/mine', '/usr/bin/chromium', PLAYWRIGHT] }))).toBe(
      '/opt/mine',
    );
  });

  test('is never quietly another than the one named', () => {
    const env = { PATH: '/usr/bin', CHROMIUM_PATH: '/opt/gone' };
    expect(() => findChromium(machine({ env, files: ['/usr/bin/chromium'] }))).toThrow(
      'CHROMIUM_PATH names /opt/gone, and there is no such file.',
    );
  });

  test.each(['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'])(
    'is then the system’s %s',
    (name) => {
      expect(findChromium(machine({ files: [`/usr/bin/${name}`, PLAYWRIGHT] }))).toBe(`/usr/bin/${name}`);
    },
  );

  test('follows the order of PATH', () => {
    const files = ['/usr/bin/chromium', '/usr/local/bin/google-chrome'];
    expect(findChromium(machine({ files }))).toBe('/usr/local/bin/google-chrome');
  });

  test('is not a script that does not start', () => {
    const files = ['/usr/bin/chromium-browser', PLAYWRIGHT];
    expect(findChromium(machine({ files, broken: ['/usr/bin/chromium-browser'] }))).toBe(PLAYWRIGHT);
  });

  test('is found in the usual places of macOS and Windows', () => {
    const mac = '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome';
    expect(findChromium(machine({ platform: 'darwin', files: [mac] }))).toBe(mac);
    const windows = 'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe';
    const env = { PROGRAMFILES: 'C:\\Program Files' };
    expect(findChromium(machine({ platform: 'win32', env, files: [windows] }))).toBe(windows);
  });

  test('is then Playwright’s own', () => {
    expect(findChromium(machine({ files: [PLAYWRIGHT] }))).toBe(PLAYWRIGHT);
  });

  test('is installed from the system’s packages where that is allowed', () => {
    const fresh = machine({
      isRoot: true,
      files: ['/usr/bin/apt-get'],
      installable: { 'apt-get install chromium': '/usr/bin/chromium' },
    });
    expect(findChromium(fresh)).toBe('/usr/bin/chromium');
    expect(fresh.commands).toEqual(['apt-get update', 'apt-get install chromium']);
  });

  test('is otherwise installed by Playwright', () => {
    const install = { 'npx playwright install chromium': PLAYWRIGHT };
    const user = machine({ files: ['/usr/bin/apt-get'], installable: install });
    expect(findChromium(user)).toBe(PLAYWRIGHT);
    expect(user.commands).toEqual(['npx playwright install chromium']);
    const offline = machine({ isRoot: true, files: ['/usr/bin/apt-get'], installable: install });
    expect(findChromium(offline)).toBe(PLAYWRIGHT);
    expect(offline.commands.at(-1)).toBe('npx playwright install chromium');
  });

  test('fails in one clear sentence where there is none to be had', () => {
    const bare = machine({ playwrightPath: () => null });
    expect(() => findChromium(bare)).toThrow(/^The browser tests need a Chromium: [^.]+\.$/);
    expect(bare.commands).toEqual(['npx playwright install chromium']);
  });

  test('is found here and starts', () => {
    const page =
      'data:text/html,<p>before</p><script>document.querySelector("p").textContent = 6 * 7</script>';
    const args = [...chromiumFlags, '--headless', '--dump-dom', page];
    expect(execFileSync(findChromium(), args, { encoding: 'utf8', stdio: 'pipe' })).toContain('<p>42</p>');
  });
});
