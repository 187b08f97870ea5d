import { type JobStep, jobSteps } from '../../papers/next/job-steps.ts';

/** The ten steps of the job as the app has them. */
export const stepIds = jobSteps;
export type StepId = JobStep;

/**
 * Where in the app one is: the list of boats, one boat of the server, or a file opened by hand. `cable` is the id on a label, by
 * which the code on it leads to its cable.
 */
export type Route =
  | { readonly page: 'boats' }
  | { readonly page: 'boat'; readonly id: string; readonly step: StepId; readonly cable?: string }
  | { readonly page: 'file'; readonly step: StepId };

const firstStep: StepId = 'lines';

const stepOf = (text: string | undefined): StepId => stepIds.find((step) => step === text) ?? firstStep;

/** A label as the boat file has it. */
const plainLabel = /^[A-Z][A-Z0-9-]{1,9}$/;

/** No step up in the folder, and nothing hidden. */
const plainId = /^[^./\\][^/\\]*$/;

/** The id as it stands in an address; undefined where it is badly written. */
const idOf = (written: string | undefined): string | undefined => {
  try {
    const id = decodeURIComponent(written ?? '');
    return plainId.test(id) ? id : undefined;
  } catch {
    return undefined;
  }
};

/**
 * Reads the part of the address after `#`. Anything not understood is the list of boats.
 *
 * @example routeOf('#/boat/gannet/needs') // { page: 'boat', id: 'gannet', step: 'needs' }
 */
export const routeOf = (hash: string): Route => {
  const [page, ...rest] = hash.replace(/^#\/?/, '').split('/');
  if (page === 'file') return { page, step: stepOf(rest[0]) };
  const [written, step, cable = ''] = rest;
  const id = idOf(written);
  if (page === 'boat' && id !== undefined) {
    const isCable = step === 'cable' && plainLabel.test(cable);
    return { page, id, step: stepOf(step), ...(isCable ? { cable } : {}) };
  }
  return { page: 'boats' };
};

/** The address of a route, the other way round. */
export const hashOf = (route: Route): string => {
  switch (route.page) {
    case 'boats':
      return '#/';
    case 'boat':
      if (route.cable !== undefined) return `#/boat/${encodeURIComponent(route.id)}/cable/${route.cable}`;
      return `#/boat/${encodeURIComponent(route.id)}${route.step === firstStep ? '' : `/${route.step}`}`;
    case 'file':
      return `#/file${route.step === firstStep ? '' : `/${route.step}`}`;
  }
};

/** The route to a step of the same boat; a cable that an address named is left behind. */
export const atStep = (route: Exclude<Route, { page: 'boats' }>, step: StepId): Route =>
  route.page === 'boat' ? { page: 'boat', id: route.id, step } : { page: 'file', step };

/** Whether two routes show the same boat, at whatever step. */
export const isSameBoat = (a: Route, b: Route): boolean =>
  a.page === b.page && (a.page !== 'boat' || b.page !== 'boat' || a.id === b.id);
