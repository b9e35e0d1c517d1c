import { defineRouteMiddleware, type StarlightRouteData } from '@astrojs/starlight/route-data';
import { planner } from './doors.ts';
import { jobHref, jobsByGroup } from './job-registry.ts';
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
  const group = (label: string, entries: Entry[]): Entry => ({
    type: 'group',
    label,
    entries,
    collapsed: false,
    badge: undefined,
  });

  locals.starlightRoute.sidebar = [
    link(planner.title, planner.href),
    group('Calculators', [
      link('All calculators', '/calculators/'),
      ...jobsByGroup().map(({ group: title, jobs }) =>
        group(
          title,
          jobs.map((named) => link(named.job.title, jobHref(named))),
        ),
      ),
    ]),
    group('Rules', [
      link('All rules', '/rules/'),
      // The rules of one package at a time: those of all would be most of what each page weighs.
      ...packages.map(({ name, title, rules }) =>
        url.pathname.startsWith(`/rules/${name}/`)
          ? group(
              title,
              rules.map((rule) => link(rule.title, ruleHref(rule))),
            )
          : link(title, `/rules/#${name}`),
      ),
    ]),
    group('Why believe it', [
      link('How to read a page', '/reading/'),
      link('Worked examples', '/examples/'),
      link('Accuracy', '/accuracy/'),
      link('Sources', '/sources/'),
    ]),
    group('Use and extend', [
      link('Design a top', '/design-a-top/'),
      link('In code', '/in-code/'),
      link('API reference', '/api/'),
      link('Add a rule', '/add-a-rule/'),
    ]),
  ];
});
