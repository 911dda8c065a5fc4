import envPaths from 'env-paths';

/** Where this platform wants a program's data (XDG and its counterparts). */
export const platformFolders = (): { readonly data: string } => envPaths('flarewise', { suffix: '' });
