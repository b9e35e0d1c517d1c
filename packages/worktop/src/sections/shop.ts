import { checkShop } from '../checks/shop.ts';
import { plannedShop } from '../parts/shop.ts';
import type { Section } from './section.ts';

export const shop: Section<typeof plannedShop> = { planned: plannedShop, checks: [checkShop] };
