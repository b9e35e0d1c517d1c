import starlight from '@astrojs/starlight';
import { defineConfig } from 'astro/config';
import starlightLinksValidator from 'starlight-links-validator';
import { head } from './head.ts';
import { apiReference } from './integrations/api.ts';
import { offline } from './integrations/offline.ts';
import { policy } from './integrations/policy.ts';
import { jobModules } from './job-modules.ts';
import { planModules } from './plan-modules.ts';
import { ruleModules } from './rule-modules.ts';

// Building this site tells nobody: Astro asks for this before it first reports.
process.env.ASTRO_TELEMETRY_DISABLED = '1';

// The packages' sources, not their builds; each of Vite's environments has its own list.
const resolve = { conditions: ['@scantling/source', 'module', 'browser', 'default'] };
const resolveOnServer = { conditions: ['@scantling/source', 'module', 'node', 'default'] };

/** Lists of what each module will ask for later weigh more than they save. Astro passes over this setting elsewhere. */
const noPreloadLists = {
  name: 'no-preload-lists',
  configEnvironment: (name: string) => (name === 'client' ? { build: { modulePreload: false } } : undefined),
};

export default defineConfig({
  integrations: [
    apiReference(),
    starlight({
      title: 'Scantling',
      description: 'The numbers behind a solid-wood top on a metal base, each with its source.',
      head,
      customCss: ['./src/styles/theme.css', './src/styles/page.css', './src/styles/print.css'],
      components: {
        Footer: './src/components/Footer.astro',
        Header: './src/components/Header.astro',
        Hero: './src/components/Hero.astro',
        Search: './src/components/Search.astro',
        SiteTitle: './src/components/SiteTitle.astro',
      },
      routeMiddleware: './src/sidebar.ts',
      pagination: false,
      expressiveCode: { defaultProps: { wrap: true } },
      plugins: [
        // Pages made from cards are no Markdown, so this plugin can't see into them: test/pages.test.ts does.
        starlightLinksValidator({
          exclude: ['/', '/plan/', '/calculators/**', '/rules/**', '/examples/', '/sources/**', '/accuracy/'],
        }),
      ],
    }),
    policy(),
    offline(),
  ],
  vite: {
    plugins: [jobModules(), planModules(), ruleModules(), noPreloadLists],
    environments: {
      client: { resolve },
      prerender: { resolve: resolveOnServer },
      ssr: { resolve: resolveOnServer },
    },
  },
});
