import { checkAccessories } from '../checks/accessories.ts';
import { plannedAccessories } from '../parts/accessories.ts';
import type { Section } from './section.ts';

export const accessories: Section<typeof plannedAccessories> = {
  planned: plannedAccessories,
  checks: [checkAccessories],
};
