import type { Component } from 'svelte';
import BobweightBar from './balance/BobweightBar.svelte';
import ClearanceTemperature from './bearings/ClearanceTemperature.svelte';
import CrankThrow from './bearings/CrankThrow.svelte';
import InertiaShares from './inertia/InertiaShares.svelte';
import InertiaTorque from './inertia/InertiaTorque.svelte';
import GrooveSection from './rings/GrooveSection.svelte';
import LoadSpeed from './loads/LoadSpeed.svelte';
import MaterialBars from './rods/MaterialBars.svelte';
import Mechanism from './motion/Mechanism.svelte';
import RodSection from './rods/RodSection.svelte';
import PinSection from './pins/PinSection.svelte';
import RingShapes from './rings/RingShapes.svelte';
import PressureCurve from './loads/PressureCurve.svelte';
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

/** Drawings that stand in half of a wide page, beside their curves, and are as wide there as on a phone. */
const inHalves = new Set(['mechanism', 'groove-section']);

/** A figure as an .astro file sees it: a function of its props. */
type Drawn = (props: FigureProps) => unknown;

/** The same figures for the server, which renders them all and sends none of their code. */
export const figures = parts as unknown as Readonly<Record<string, Drawn>>;

/** The component to give to `WideFigure`, where a wide page has room for another drawing than a phone. */
export function wideFigure(id: string): Component<FigureProps> | undefined {
  return inHalves.has(id) ? undefined : parts[id];
}
