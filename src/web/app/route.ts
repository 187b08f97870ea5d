/** The ten steps of the job, in order; the same names everywhere. */
export const stepIds = ['boat', 'kit', 'needs', 'lines', 'power', 'fit', 'buy', 'work', 'prove', 'binder'] as const;
export type StepId = (typeof stepIds)[number];

/** Where in the app one is: the list of boats, one boat of the server, or a file opened by hand. */
export type Route =
  | { readonly page: 'boats' }
  | { readonly page: 'boat'; readonly id: string; readonly step: StepId }
  | { readonly page: 'file'; readonly step: StepId };

const firstStep: StepId = 'lines';

const stepOf = (text: string | undefined): StepId => stepIds.find((step) => step === text) ?? firstStep;

const plainId = /^[A-Za-z0-9][A-Za-z0-9._-]*$/;

/**
 * Reads the part of the address after `#`. Anything not understood is the list of boats.
 *
 * @example routeOf('#/boat/gannet/needs') // { page: 'boat', id: 'gannet', step: 'needs' }
 */
export const routeOf = (hash: string): Route => {
  const [page, ...rest] = hash.replace(/^#\/?/, '').split('/');
  if (page === 'file') return { page, step: stepOf(rest[0]) };
  const [id, step] = rest;
  if (page === 'boat' && id !== undefined && plainId.test(id)) return { page, id, step: stepOf(step) };
  return { page: 'boats' };
};

/** The address of a route, the other way round. */
export const hashOf = (route: Route): string => {
  switch (route.page) {
    case 'boats':
      return '#/';
    case 'boat':
      return `#/boat/${route.id}${route.step === firstStep ? '' : `/${route.step}`}`;
    case 'file':
      return `#/file${route.step === firstStep ? '' : `/${route.step}`}`;
  }
};
