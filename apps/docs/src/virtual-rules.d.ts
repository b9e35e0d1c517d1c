/** Written by `rule-modules.ts`: by package, and in it by file, what loads a rule's module. */
declare module 'virtual:rules' {
  type Load<Module> = Readonly<Record<string, () => Promise<Module>>>;
  const packages: Load<{ readonly default: Load<object> }>;
  export default packages;
}
