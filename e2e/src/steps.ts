import type { Page } from 'playwright-core';

/** A visit to a place and a unit nobody knows, begun from the start place. */
export const beginVisit = async (page: Page, site: string): Promise<void> => {
  await page.getByRole('link', { name: 'New visit' }).click();
  await page.getByLabel('The name of the place').fill(site);
  await page.getByRole('button', { name: `New place: ${site}` }).click();
  await page.getByRole('button', { name: 'Softener' }).click();
  await page.getByRole('button', { name: 'Begin the visit' }).click();
  await page.getByRole('heading', { name: 'The first minute' }).waitFor();
};

export const tellComplaint = async (page: Page, words: string): Promise<void> => {
  await page.getByLabel("In the customer's own words").fill(words);
  await page.getByRole('button', { name: 'Hard water' }).click();
  await page.getByRole('button', { name: 'Keep the complaint' }).click();
  await page.getByText(`“${words}”`).waitFor();
};

/** The shell is on the device once its worker rules the page. */
export const shellIsKept = async (page: Page): Promise<void> => {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
};

export const stageNames = ['recognise', 'find', 'repair', 'work', 'program', 'prove', 'hand-over'] as const;
