import { accessories } from './sections/accessories.ts';
import { cables } from './sections/cables.ts';
import { calendar } from './sections/calendar.ts';
import { glueUp } from './sections/glue-up.ts';
import { lift } from './sections/lift.ts';
import { sag } from './sections/sag.ts';
import { screws } from './sections/screws.ts';
import { shop } from './sections/shop.ts';
import { strip } from './sections/strip.ts';
import { template } from './sections/template.ts';

/** The sections that a plan may leave out. */
export const sections = { accessories, cables, calendar, glueUp, lift, sag, screws, shop, strip, template };

export type Sections = typeof sections;
