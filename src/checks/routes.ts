import type { Route, Routes } from './route.ts';

const files = import.meta.glob<{ readonly routes: Routes }>('../../content/topics/*/routes.ts', {
  eager: true,
});

/** A topic's independent routes by key; empty where it has none. */
export const routesOf: Readonly<Record<string, Routes>> = Object.fromEntries(
  Object.entries(files).map(([path, { routes }]) => [path.split('/').at(-2) ?? path, routes]),
);

/** All routes of the site. */
export const allRoutes: readonly Route[] = Object.values(routesOf).flatMap((routes) =>
  Object.values(routes),
);
