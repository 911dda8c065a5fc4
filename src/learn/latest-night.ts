import type { LoggedNight } from './logged.js';

/** The latest of some nights: the last in the list among nights of one day, and among nights without a day if none has one. */
export const latestOf = <T extends { readonly night: LoggedNight }>(nights: readonly T[]): T | undefined =>
  nights.reduce<T | undefined>((last, each) => (last && dayOf(last) > dayOf(each) ? last : each), undefined);

const dayOf = ({ night: { night } }: { readonly night: LoggedNight }): string => night.on ?? '';
