import { defineRouteMiddleware, type StarlightRouteData } from '@astrojs/starlight/route-data';
import { packages, ruleHref } from './registry.ts';

type Entry = StarlightRouteData['sidebar'][number];

/** The sidebar comes from the registries: pages made from cards are not in any folder it could be read from. */
export const onRequest = defineRouteMiddleware(({ locals, url }) => {
  const link = (label: string, href: string): Entry => ({
    type: 'link',
    label,
    href,
    isCurrent: url.pathname === href,
    badge: undefined,
    attrs: {},
  });
  /** Without a folder it stands open; with one, only on the pages in it. */
  const group = (label: string, entries: Entry[], folder?: string): Entry => ({
    type: 'group',
    label,
    entries,
    collapsed: folder !== undefined && !url.pathname.startsWith(folder),
    badge: undefined,
  });

  locals.starlightRoute.sidebar = [
    group(
      'Rules',
      [
        link('All rules', '/rules/'),
        ...packages.map(({ name, title, rules }) =>
          group(
            title,
            rules.map((rule) => link(rule.title, ruleHref(rule))),
            `/rules/${name}/`,
          ),
        ),
      ],
      '/rules/',
    ),
    group('Why believe it', [
      link('How to read a page', '/reading/'),
      link('Worked examples', '/examples/'),
      link('Accuracy', '/accuracy/'),
      link('Sources', '/sources/'),
    ]),
    group('Use and extend', [link('In code', '/in-code/'), link('Add a rule', '/add-a-rule/')]),
  ];
});
