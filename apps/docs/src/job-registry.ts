import { type Job, type JobGroup, jobGroups } from './calculator/calculation.ts';

/** A calculator for a job, with the name of its page. */
export interface NamedJob {
  readonly name: string;
  // biome-ignore lint/suspicious/noExplicitAny: only `any` both takes and gives the values of whatever fields
  readonly job: Job<any>;
}

// Every file of the folder: a new calculator needs no line here.
const modules = import.meta.glob<{ default: NamedJob['job'] }>('./jobs/*.ts', { eager: true });

export const jobs: readonly NamedJob[] = Object.entries(modules)
  .map(([path, { default: job }]) => ({ name: path.slice('./jobs/'.length, -'.ts'.length), job }))
  .sort((a, b) => a.job.title.localeCompare(b.job.title, 'en'));

export const jobHref = ({ name }: NamedJob): string => `/calculators/${name}/`;

/** The calculators in the order of the work. */
export const jobsByGroup = (): { group: JobGroup; jobs: NamedJob[] }[] =>
  jobGroups
    .map((group) => ({ group, jobs: jobs.filter(({ job }) => job.group === group) }))
    .filter(({ jobs: ofGroup }) => ofGroup.length > 0);
