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
  'crank-throw': {
    calculator: 'crank-overlap',
    load: async () => (await import('./CrankThrow.svelte')).default,
  },
  'clearance-temperature': {
    calculator: 'bearing-clearance',
    load: async () => (await import('./ClearanceTemperature.svelte')).default,
  },
  'rod-section': {
    calculator: 'rod-shank',
    load: async () => (await import('./RodSection.svelte')).default,
  },
  'material-bars': {
    calculator: 'rod-materials',
    load: async () => (await import('./MaterialBars.svelte')).default,
  },
  'ring-shapes': {
    calculator: 'ring-tension',
    load: async () => (await import('./RingShapes.svelte')).default,
  },
  'pin-section': {
    calculator: 'wrist-pin',
    load: async () => (await import('./PinSection.svelte')).default,
  },
  'pressure-curve': {
    calculator: 'cylinder-pressure',
    load: async () => (await import('./PressureCurve.svelte')).default,
  },
  'groove-section': {
    calculator: 'gas-port',
    load: async () => (await import('./GrooveSection.svelte')).default,
  },
};
