/** Closes every caution: who has the last word. */
export const deference =
  'The part makers’ instructions, the sanctioning rules, local codes and the judgement of qualified people come before anything on this page.';
