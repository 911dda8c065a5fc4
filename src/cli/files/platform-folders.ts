import envPaths from 'env-paths';

/** Where this platform wants a program's data and what can be made again (XDG and its counterparts). */
export const platformFolders = (): { readonly data: string; readonly cache: string } =>
  envPaths('flarewise', { suffix: '' });
