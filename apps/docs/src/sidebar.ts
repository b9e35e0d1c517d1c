import { defineRouteMiddleware, type StarlightRouteData } from '@astrojs/starlight/route-data';
import { packages, ruleHref } from './registry.ts';

type Entry = StarlightRouteData['sidebar'][number];

/** The sidebar comes from the registry: pages made from cards are not in any folder it could be read from. */
export const onRequest = defineRouteMiddleware(({ locals, url }) => {
  const link = (label: string, href: string): Entry => ({
    type: 'link',
    label,
    href,
    isCurrent: url.pathname === href,
    badge: undefined,
    attrs: {},
  });
  const group = (label: string, entries: Entry[], collapsed = false): Entry => ({
    type: 'group',
    label,
    entries,
    collapsed: collapsed && !url.pathname.startsWith(`/rules/${label.toLowerCase()}/`),
    badge: undefined,
  });

  locals.starlightRoute.sidebar = [
    group('Calculators', [
      link('All of them', '/rules/'),
      ...packages.map(({ title, rules }) =>
        group(
          title,
          rules.map((rule) => link(rule.title, ruleHref(rule))),
          true,
        ),
      ),
    ]),
    group('Why believe it', [
      link('How to read a page', '/reading/'),
      link('Worked examples', '/accuracy/'),
      link('Sources', '/sources/'),
    ]),
    group('Use and extend', [link('In code', '/in-code/'), link('Add a rule', '/add-a-rule/')]),
  ];
});
