export { expectWithin } from './expect-within.ts';
export { describeRules, exportProblems, ruleChecks, ruleFiles } from './law-kit/describe-rules.ts';
export { type Comparison, compareExample } from './law-kit/examples.ts';
export { inputArb, numberArb } from './law-kit/input-arbitrary.ts';
export { describeTables } from './tables/describe-tables.ts';
