import type { Component } from 'svelte';
import type { FigureProps } from './types.ts';

/** The moving figures: whose numbers each draws, and how the browser fetches its own code alone. */
export const figureOf: Readonly<
  Record<
    string,
    { readonly calculator: string; readonly load: () => Promise<Component<FigureProps>> }
  >
> = {
  mechanism: {
    calculator: 'piston-motion',
    load: async () => (await import('./Mechanism.svelte')).default,
  },
  'bobweight-bar': {
    calculator: 'bobweight',
    load: async () => (await import('./BobweightBar.svelte')).default,
  },
  'load-speed': {
    calculator: 'reversal-load',
    load: async () => (await import('./LoadSpeed.svelte')).default,
  },
  'inertia-shares': {
    calculator: 'rotating-inertia',
    load: async () => (await import('./InertiaShares.svelte')).default,
  },
  'inertia-torque': {
    calculator: 'rotating-inertia',
    load: async () => (await import('./InertiaTorque.svelte')).default,
  },
};
