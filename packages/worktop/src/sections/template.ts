import { checkTemplate } from '../checks/template.ts';
import { plannedTemplate } from '../parts/template.ts';
import type { Section } from './section.ts';

export const template: Section<typeof plannedTemplate> = {
  planned: plannedTemplate,
  checks: [checkTemplate],
};
