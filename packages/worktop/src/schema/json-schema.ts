import * as z from 'zod/mini';
import { notes, planFile } from './plan-file.ts';

/** The JSON Schema of plan files, in the draft that editors know best. */
export const planJsonSchema = (): object =>
  z.toJSONSchema(planFile, { target: 'draft-07', io: 'input', metadata: notes });
