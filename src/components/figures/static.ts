import type { Component } from 'svelte';
import BobweightBar from './BobweightBar.svelte';
import LoadSpeed from './LoadSpeed.svelte';
import Mechanism from './Mechanism.svelte';
import type { FigureProps } from './types.ts';

/** The same figures for the server, which renders them all and sends none of their code. */
export const figures: Readonly<Record<string, Component<FigureProps>>> = {
  mechanism: Mechanism,
  'bobweight-bar': BobweightBar,
  'load-speed': LoadSpeed,
};
