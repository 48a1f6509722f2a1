import type { Component } from 'svelte';
import BobweightBar from './BobweightBar.svelte';
import InertiaShares from './InertiaShares.svelte';
import InertiaTorque from './InertiaTorque.svelte';
import LoadSpeed from './LoadSpeed.svelte';
import Mechanism from './Mechanism.svelte';
import type { FigureProps } from './types.ts';

const parts: Readonly<Record<string, Component<FigureProps>>> = {
  mechanism: Mechanism,
  'bobweight-bar': BobweightBar,
  'load-speed': LoadSpeed,
  'inertia-shares': InertiaShares,
  'inertia-torque': InertiaTorque,
};

/**
 * The same figures for the server, which renders them all and sends none of their code. Typed as functions
 * of their props, which is how an .astro file sees a component.
 */
export const figures = parts as unknown as Readonly<
  Record<string, (props: FigureProps) => unknown>
>;
