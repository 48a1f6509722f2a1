import type { Route } from '../src/checks/route.ts';

/**
 * The title of a test that takes an independent route: what the reader is told of it, or `title` where one test
 * is run for several cases. A route counts only while a test names it here; tests/content/routes.test.ts looks.
 */
export function proves(route: Route, title = route.say): string {
  return title;
}
