/** What stands on the hirer's page before anything is opened: its own texts, names of things, titles of cards. */
const FIRST = /^(hirer(?!\.(statement|missed)\.)|thing|unit|store)\.|^card\..*\.title$/;

/** Whether a message of the guide is needed for the first card; the rest comes once that is drawn. */
export const isFirstWord = (id: string): boolean => FIRST.test(id);
