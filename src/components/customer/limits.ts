/** What the customer's page does not say. */
export const limits =
  'These are results of models. They do not say how long a part lives or that it is fit for use: its maker’s instructions and the rules of the event come first.';
