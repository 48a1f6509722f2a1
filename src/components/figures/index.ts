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
    load: async () => (await import('./motion/Mechanism.svelte')).default,
  },
  'bobweight-bar': {
    calculator: 'bobweight',
    load: async () => (await import('./balance/BobweightBar.svelte')).default,
  },
  'load-speed': {
    calculator: 'reversal-load',
    load: async () => (await import('./loads/LoadSpeed.svelte')).default,
  },
  'inertia-shares': {
    calculator: 'rotating-inertia',
    load: async () => (await import('./inertia/InertiaShares.svelte')).default,
  },
  'inertia-torque': {
    calculator: 'rotating-inertia',
    load: async () => (await import('./inertia/InertiaTorque.svelte')).default,
  },
  'crank-throw': {
    calculator: 'crank-overlap',
    load: async () => (await import('./bearings/CrankThrow.svelte')).default,
  },
  'clearance-temperature': {
    calculator: 'bearing-clearance',
    load: async () => (await import('./bearings/ClearanceTemperature.svelte')).default,
  },
  'rod-section': {
    calculator: 'rod-shank',
    load: async () => (await import('./rods/RodSection.svelte')).default,
  },
  'material-bars': {
    calculator: 'rod-materials',
    load: async () => (await import('./rods/MaterialBars.svelte')).default,
  },
  'ring-shapes': {
    calculator: 'ring-tension',
    load: async () => (await import('./rings/RingShapes.svelte')).default,
  },
  'pin-section': {
    calculator: 'wrist-pin',
    load: async () => (await import('./pins/PinSection.svelte')).default,
  },
  'pressure-curve': {
    calculator: 'cylinder-pressure',
    load: async () => (await import('./loads/PressureCurve.svelte')).default,
  },
  'groove-section': {
    calculator: 'gas-port',
    load: async () => (await import('./rings/GrooveSection.svelte')).default,
  },
};
