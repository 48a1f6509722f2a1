/** What a button says whose code could not be fetched when it was pressed. */
export const unfetched =
  'The connection is lost, so this could not be fetched. Try again when it is back, or load the page again then; your numbers are kept.';
