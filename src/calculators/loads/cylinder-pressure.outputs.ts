const number = 'number';
const pressure = { type: number, kind: 'pressure' } as const;
const angle = { type: number, kind: 'angle' } as const;
const energy = { type: number, kind: 'energy', metric: 'J', inch: 'ftlbf' } as const;
const temperature = { type: number, kind: 'temperature' } as const;

/** What the cylinder-pressure calculator gives, from the peak down to the energies that must add up. */
export const pressureOutputs = {
  peakPressure: {
    ...pressure,
    label: 'Peak of the mean cycle',
    symbol: 'p_peak',
    phrase: 'The peak of the mean cycle',
    main: true,
    carries: 'peakPressure',
  },
  peakAngle: {
    ...angle,
    label: 'Its crank angle after TDC',
    symbol: 'θ_peak',
    phrase: 'The crank angle of the peak, after TDC,',
    carries: 'peakAngle',
  },
  worstPeak: {
    ...pressure,
    label: 'Peak at three standard deviations above',
    symbol: 'p_3s',
    phrase: 'In the worst few of a thousand cycles the peak',
  },
  peakForce: {
    type: number,
    kind: 'force',
    label: 'Gas force on the piston at that worst peak',
    symbol: 'F_3s',
  },
  netMep: {
    ...pressure,
    label: 'Indicated mean effective pressure, net',
    symbol: 'p_net',
    phrase: 'The net indicated mean effective pressure',
    main: true,
  },
  grossMep: {
    ...pressure,
    label: 'The same, gross: compression and expansion only',
    symbol: 'p_gross',
  },
  pumpingMep: {
    ...pressure,
    label: 'What gas exchange takes',
    symbol: 'p_pump',
  },
  friction: { ...pressure, label: 'Friction at this speed', symbol: 'p_fr,n' },
  frictionPublished: {
    ...pressure,
    label: 'Friction by the published quadratic',
    symbol: 'p_fr,pub',
  },
  brakeMep: { ...pressure, label: 'Brake mean effective pressure', symbol: 'p_brake' },
  torque: {
    type: number,
    kind: 'torque',
    label: 'Torque of the engine',
    symbol: 'T',
    phrase: 'The torque',
    main: true,
  },
  indicatedPower: { type: number, kind: 'power', label: 'Indicated power', symbol: 'P_i' },
  power: { type: number, kind: 'power', label: 'Power at the crank', symbol: 'P' },
  efficiency: {
    type: number,
    kind: 'ratio',
    metric: 'pct',
    inch: 'pct',
    label: 'Net indicated work over the heat of the fuel',
    symbol: 'η_i',
  },
  closingPressure: {
    ...pressure,
    label: 'Pressure when the intake closes',
    symbol: 'p_IVC',
    phrase: 'The pressure when the intake closes',
  },
  closingRatio: {
    type: number,
    kind: 'ratio',
    label: 'Volume ratio from intake closing',
    symbol: 'ε_IVC',
    phrase: 'The volume ratio from intake closing',
  },
  motoredPressure: {
    ...pressure,
    label: 'Pressure at TDC if nothing burned',
    symbol: 'p_mot',
  },
  openingPressure: {
    ...pressure,
    label: 'Pressure when the exhaust opens',
    symbol: 'p_EVO',
  },
  halfBurnt: {
    ...angle,
    label: 'Half of the burn is done at, after TDC',
    symbol: 'θ_50',
  },
  startPressure: {
    ...pressure,
    label: 'Pressure when burning starts',
    symbol: 'p_s',
  },
  startTemperature: {
    ...temperature,
    label: 'Gas temperature when burning starts',
    symbol: 'T_s',
  },
  hottest: {
    ...temperature,
    label: 'Greatest mean gas temperature',
    symbol: 'T_max',
  },
  openingTemperature: {
    ...temperature,
    label: 'Gas temperature when the exhaust opens',
    symbol: 'T_EVO',
  },
  trappedMass: {
    type: number,
    kind: 'mass',
    metric: 'mg',
    inch: 'mg',
    label: 'Charge shut in, one cylinder',
    symbol: 'm',
  },
  fuelMass: {
    type: number,
    kind: 'mass',
    metric: 'mg',
    inch: 'mg',
    label: 'Fuel in it',
    symbol: 'm_f',
  },
  displacement: {
    type: number,
    kind: 'volume',
    label: 'Displacement of the engine',
    symbol: 'V_D',
  },
  released: { ...energy, label: 'Heat set free, one cylinder and cycle', symbol: 'Q' },
  grossWork: {
    ...energy,
    label: 'Work from intake closing to exhaust opening',
    symbol: 'W_c',
  },
  storedEnergy: {
    ...energy,
    label: 'More internal energy at exhaust opening than at intake closing',
    symbol: 'ΔU',
  },
  wallBurning: {
    ...energy,
    label: 'Heat to the walls while burning',
    symbol: 'Q_w',
  },
  wallPolytropes: {
    ...energy,
    label: 'Heat to the walls that the two exponents imply',
    symbol: 'Q_n',
  },
  pressureCurve: {
    type: 'series',
    label: 'Cylinder pressure over the crank angle',
    x: { label: 'Crank angle after firing TDC', symbol: 'θ', kind: 'angle' },
    y: { label: 'Cylinder pressure (absolute)', symbol: 'p', kind: 'pressure' },
  },
  volumeCurve: {
    type: 'series',
    label: 'Cylinder volume over the crank angle',
    x: { label: 'Crank angle after firing TDC', symbol: 'θ', kind: 'angle' },
    y: { label: 'Cylinder volume', symbol: 'V', kind: 'volume' },
  },
} as const;
