import type { Component } from 'svelte';
import BobweightBar from './BobweightBar.svelte';
import ClearanceTemperature from './ClearanceTemperature.svelte';
import CrankThrow from './CrankThrow.svelte';
import InertiaShares from './InertiaShares.svelte';
import InertiaTorque from './InertiaTorque.svelte';
import GrooveSection from './GrooveSection.svelte';
import LoadSpeed from './LoadSpeed.svelte';
import MaterialBars from './MaterialBars.svelte';
import Mechanism from './Mechanism.svelte';
import RodSection from './RodSection.svelte';
import PinSection from './PinSection.svelte';
import RingShapes from './RingShapes.svelte';
import PressureCurve from './PressureCurve.svelte';
import type { FigureProps } from './types.ts';

const parts: Readonly<Record<string, Component<FigureProps>>> = {
  mechanism: Mechanism,
  'bobweight-bar': BobweightBar,
  'load-speed': LoadSpeed,
  'crank-throw': CrankThrow,
  'clearance-temperature': ClearanceTemperature,
  'inertia-shares': InertiaShares,
  'inertia-torque': InertiaTorque,
  'rod-section': RodSection,
  'material-bars': MaterialBars,
  'ring-shapes': RingShapes,
  'pin-section': PinSection,
  'pressure-curve': PressureCurve,
  'groove-section': GrooveSection,
};

/**
 * The same figures for the server, which renders them all and sends none of their code. Typed as functions
 * of their props, which is how an .astro file sees a component.
 */
export const figures = parts as unknown as Readonly<
  Record<string, (props: FigureProps) => unknown>
>;
