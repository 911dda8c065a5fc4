import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';

/** A file opened in a browser, with all that it said and fetched besides itself. */
export interface Visit {
  readonly page: Page;
  readonly messages: readonly string[];
  readonly requests: readonly string[];
}

export interface Screen {
  readonly width: number;
  readonly scheme: 'light' | 'dark';
}

/** Each width and each scheme once: the width decides what fits, the scheme what can be read. */
export const SCREENS: readonly Screen[] = [
  { width: 360, scheme: 'dark' },
  { width: 1280, scheme: 'light' },
];

/** Opens a file from the disk, hands it over, and closes it again. */
export async function visit<T>(
  browser: Browser,
  path: string,
  { width, scheme }: Screen,
  use: (visit: Visit) => Promise<T>,
): Promise<T> {
  const context = await browser.newContext({ viewport: { width, height: 900 }, colorScheme: scheme });
  context.setDefaultTimeout(0); // a busy machine is no fault
  try {
    const page = await context.newPage();
    const messages: string[] = [];
    const requests: string[] = [];
    const own = pathToFileURL(path).href;
    page.on('console', (message) => messages.push(message.text()));
    page.on('pageerror', (error) => messages.push(error.message));
    page.on('request', (request) => {
      if (request.url() !== own && !request.url().startsWith('data:')) requests.push(request.url());
    });
    await page.goto(own);
    await page.evaluate('document.fonts.ready.then(() => true)');
    return await use({ page, messages, requests });
  } finally {
    await context.close();
  }
}
