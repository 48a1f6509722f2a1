import type * as quantities from './quantities.ts';

/** How a quantity is measured at the bench, and what is easily got wrong. Read by the build only. */
export interface QuantityNote {
  readonly measure: string;
  readonly note?: string;
}

/**
 * One note for every quantity of the dictionary; the compiler names the one that is missing. The ways of
 * measuring are those of the trade: common practice, no source.
 */
export const quantityNotes: Readonly<Record<keyof typeof quantities, QuantityNote>> = {
  bore: {
    measure:
      'Dial bore gauge set in a micrometer; three heights, two directions at each. Use the mean for volume and the least for clearance.',
    note: 'A bore is honed and measured with the torque plate on.',
  },
  stroke: {
    measure: 'Dial indicator on the piston, from one dead centre to the other.',
    note: 'The stroke is twice the throw.',
  },
  rodLength: {
    measure:
      'Rod fixture, or the gap between the two bores plus half of each bore, measured with both bores round and the bolts tightened.',
  },
  pinOffset: {
    measure: 'Caliper from the pin bore to each face of the skirt; half the difference.',
    note: 'Positive towards the major thrust side.',
  },
  boreOffset: {
    measure: 'From the drawing. It can rarely be measured on the bench.',
    note: 'Also called désaxé.',
  },
  cylinderSpacing: {
    measure: 'Caliper over the outer edges of two neighbouring bores, less the mean of both bores.',
  },
  bankAngle: { measure: 'From the drawing, or a digital level on each deck.' },
  pistonMass: {
    measure: 'Scale. Bare: no pin, rings or locks, clean and dry.',
    note: 'Check the scale with a known mass first, and weigh twice.',
  },
  pinMass: { measure: 'Scale, clean and dry.' },
  ringMass: { measure: 'Scale, all rings of one piston together.' },
  lockMass: {
    measure: 'Weigh ten locks and divide; count both locks of the pin.',
    note: 'Zero for a pin that is pressed into the rod.',
  },
  rodMass: {
    measure: 'Scale: the whole rod with its bolts, without shells.',
    note: 'The two ends must add up to it within the repeatability of the fixture. A larger gap shows friction, a side pull or a wrong tare; it cannot show a support that is off centre.',
  },
  bigEndMass: {
    measure:
      'Big end on the scale, small end hung at the same height so that the rod lies level. Lift off and repeat; use the mean.',
  },
  smallEndMass: {
    measure:
      'Small end on the scale, big end hung at the same height so that the rod lies level. Lift off and repeat; use the mean.',
  },
  shellMass: { measure: 'Scale, both shells of one rod.' },
  capMass: {
    measure: 'Scale: the cap with its share of the bolts and its half shell.',
    note: 'What lies beyond the parting line is what the bolts must hold.',
  },
  oilMass: {
    measure: 'Assumed. The volume of the drilling times 0.86 g/cm³ shows the size.',
    note: 'Write on the card that it was assumed.',
  },
  rodsPerPin: {
    measure: 'Count.',
    note: 'Two on most V engines, one on an in-line engine or on each half of a split pin.',
  },
  reciprocatingFraction: {
    measure: 'Chosen: it follows from the layout, or from a decision to move the shake.',
  },
  partnerRotating: {
    measure:
      'Big end, shells and their share weighed for both rods of the pin; the second less the first.',
  },
  partnerReciprocating: {
    measure:
      'Piston, pin, rings, locks and small end weighed for both rods of the pin; the second less the first.',
  },
  bobweight: { measure: 'Scale, the clamp complete with its shims, screws and added weights.' },
  bobweightError: { measure: 'Weigh the clamp and subtract the wanted bobweight.' },
  rotatingMass: {
    measure: 'Sum of the weighed parts that turn with one crankpin: big ends, shells, oil.',
  },
  reciprocatingMass: {
    measure:
      'Sum of the weighed parts that slide with one piston: piston, pin, rings, locks, small end.',
  },
  balanceRadius: {
    measure: 'Rule or caliper from the surface of a main journal, plus half the journal.',
  },
  planeA: {
    measure: 'Rule along the crank, from its middle.',
    note: 'Negative: towards the nose.',
  },
  planeB: {
    measure: 'Rule along the crank, from its middle.',
    note: 'Positive: towards the flywheel.',
  },
  scaleResolution: { measure: 'Read it from the label of the scale.' },
  fixtureRepeat: {
    measure:
      'Lift the same rod off and put it back five times; the standard deviation of the readings.',
  },
  supportOffset: {
    measure:
      'Estimate how far the support touches from the centre of the eye; a knife edge or a ball bearing keeps it small.',
  },
  checkMass: {
    measure: 'The value on its certificate.',
    note: 'OIML R 111 class M1 allows 25 mg at 500 g.',
  },
  checkReading: {
    measure: 'Put the check mass on the scale before and after the parts, and note what it reads.',
  },
  batchMass: { measure: 'Scale, all the small parts of the batch at once.' },
  batchCount: { measure: 'Count.', note: 'Ten is usual for locks.' },
  maxSpeed: { measure: 'Chosen, then confirmed by the log.' },
  missedShiftSpeed: {
    measure:
      'The highest speed in the log of a missed shift, or an assumed margin above the highest intended speed.',
  },
  commonSpeed: { measure: 'Chosen: one speed at which both sets are compared.' },
  crankAngle: {
    measure:
      'Degree disc on the nose, zero set at true TDC with a dial indicator read on both sides of it.',
  },
  crankAcceleration: {
    measure: 'From the log: change of speed over time.',
    note: 'Zero at a steady speed.',
  },
  rodPoint: { measure: 'Caliper from the centre of the big end along the line to the small end.' },
  crankcasePressure: { measure: 'Absolute pressure sensor in the crankcase.' },
  overrunPressure: {
    measure:
      'Absolute pressure sensor in the cylinder or, near enough, in the manifold with the throttle shut.',
  },
  shankSection: { measure: 'Caliper from the centre of the small end along the beam.' },
  rodMassAbove: {
    measure:
      'From a model of the rod, or dip the small end in water up to the section and multiply the volume it displaces by the density of the rod.',
  },
  mainDiameter: { measure: 'Micrometer, two places along the journal, two directions at each.' },
  crankpinDiameter: {
    measure: 'Micrometer, two places along the journal, two directions at each.',
  },
  bigEndReadings: {
    measure: 'One reading for each lift of the big end, separated by semicolons.',
    note: 'Five lifts show the spread.',
  },
  smallEndReadings: {
    measure: 'One reading for each lift of the small end, separated by semicolons.',
    note: 'Five lifts show the spread.',
  },
  ring1Height: {
    measure: "Micrometer on the ring's flanks, at three places.",
    note: 'Called the axial width h in ISO 6621.',
  },
  ring1Radial: {
    measure: 'Micrometer with a ball anvil, from the running face to the back, at three places.',
    note: 'Called the radial wall thickness a in ISO 6621.',
  },
  ring1Modulus: {
    measure:
      'From the maker, by material: about 100 GPa for grey iron, 160 for ductile iron, 206 for steel (common practice, no source).',
  },
  ring1Tension: {
    measure:
      'Ring-tension scale with a band of the bore size closed to the end gap, or the value of the maker.',
    note: 'Called F_t in ISO 6621.',
  },
  ring1FreeGap: {
    measure: 'Caliper between the ends of the relaxed ring, at the middle of the radial thickness.',
    note: 'Called the total free gap m in ISO 6621. A ring that was spread too far has kept some of it.',
  },
  ring1Gap: {
    measure: 'Feeler, with the ring squared in its own bore.',
    note: 'Called the closed gap s in ISO 6621.',
  },
  ringOpening: {
    measure:
      'The stop of the ring expander, or a caliper on the gap while the ring passes the piston.',
    note: 'Eight to nine radial thicknesses by hand, less with a tool (common practice, no source).',
  },
  ring2Height: {
    measure: "Micrometer on the ring's flanks, at three places.",
  },
  ring2Radial: {
    measure: 'Micrometer with a ball anvil, from the running face to the back, at three places.',
  },
  ring2Modulus: {
    measure: 'From the maker, by material.',
  },
  ring2Tension: {
    measure: 'Ring-tension scale with a band of the bore size, or the value of the maker.',
  },
  ring2FreeGap: {
    measure: 'Caliper between the ends of the relaxed ring, at the middle of the radial thickness.',
  },
  ring2Gap: {
    measure: 'Feeler, with the ring squared in its own bore.',
  },
  oilRingTension: {
    measure:
      'Ring-tension scale, the oil ring complete with its expander, or the value of the maker.',
    note: 'An expander presses an oil ring out, so its own bending says nothing about it.',
  },
  packDrag: {
    measure:
      'Spring scale, the ringed piston without its rod in the oiled bore, a slow steady pull.',
    note: 'It compares packs. It does not give the friction of a running engine.',
  },
  ringFriction: {
    measure: 'Assumed: a mean over the cycle. Not measured on a bench.',
    note: '0.02 to 0.12 by lubrication and speed; use it as a band.',
  },
  benchFriction: {
    measure: 'Worked out of a bench pull and the measured tensions, or assumed.',
    note: 'About 0.13 in an oiled bore at the speed of a hand (common practice, no source).',
  },
  pinDiameter: {
    measure: 'Micrometer, at the small end and at both bosses.',
  },
  pinBore: {
    measure: 'Pin gauge or caliper, in the straight part.',
    note: 'Zero for a solid pin.',
  },
  pinTaperBore: {
    measure: 'Caliper at the mouth.',
    note: 'The same as the bore where there is no taper.',
  },
  pinTaperLength: {
    measure: 'Depth gauge, or a pin gauge of the straight bore pushed up to where it stops.',
    note: 'Zero where there is no taper. Both ends alike.',
  },
  pinLength: {
    measure: 'Micrometer.',
  },
  smallEndWidth: {
    measure: 'Caliper over the faces of the small end.',
    note: 'Less any chamfers of its bush.',
  },
  bossGap: {
    measure: 'Caliper, inside jaws, between the inner faces of the bosses.',
  },
  pinDensity: {
    measure: 'From the material: 7.85 g/cm³ for steel. Or weigh the pin and divide by its volume.',
  },
  pinModulus: {
    measure: 'From the material: 200 to 210 GPa for steel.',
  },
  peakPressure: {
    measure:
      'Pressure transducer in the cylinder, mean of many cycles, or the model of the cylinder pressure.',
    note: 'Single cycles go higher: the spread is 4 to 12 % of the peak.',
  },
  torqueSpeed: {
    measure: 'From the dynamometer.',
  },
  shankHeight: {
    measure:
      'Caliper at the thinnest place of the shank. The height lies in the plane in which the crank turns, for an I and for an H alike.',
  },
  shankWidth: {
    measure: 'Caliper at the same place, across the plane in which the crank turns.',
  },
  flangeThickness: {
    measure: 'Caliper over one flange, at mid-width. Draft and fillets: take the mean.',
  },
  webThickness: { measure: 'Ball micrometer or caliper through the pocket.' },
  shankArea: {
    measure:
      'From the drawing, or from the rod maker. Leave it empty to have it worked from the four dimensions, without fillets.',
  },
  shankLength: {
    measure:
      'Caliper, from where the small end’s ring begins to where the big end’s shoulders begin.',
  },
  stretchFactor: {
    measure:
      'From the rod maker’s pull figure over that of the shank alone, or measured on a pull rig.',
  },
  pistonToHead: { measure: 'Deck clearance and gasket as pressed, at the lowest corner.' },
  peakAngle: { measure: 'From the pressure trace, or from the model of the cylinder pressure.' },
  youngsModulus: { measure: 'From the material table.' },
  rodDensity: { measure: 'From the material table.' },
  yieldStrength: {
    measure: 'From the material table or the maker’s certificate, at the temperature of the rod.',
  },
  rodExpansion: { measure: 'From the material table.' },
  rodTemperature: { measure: 'Assumed: near that of the oil.' },
  assemblyTemperature: {
    measure: 'Thermometer beside the parts, which have lain together long enough to agree.',
  },
  rodNotchFactor: {
    measure: 'From the geometry and the finish. One for a polished shank with no step.',
  },
  rodMargin: { measure: 'A choice: what the design code, the rule book or the maker asks for.' },
  stretchWanted: { measure: 'A choice: what the clearance to the head can spare.' },
  endFactor: {
    measure:
      'From how the ends are held: 1 where both ends turn freely, as a rod does in the plane of motion; 0.5 where both are held, as it nearly is across that plane; 2 where one is free.',
  },
  gyrationRadius: {
    measure:
      'Root of second moment over area, from the dimensions of the section. A quarter of the diameter for a round bar.',
  },
  rankineDivisor: {
    measure:
      'From the textbook: 7500 for mild steel, 9000 for wrought iron, 1600 for cast iron in textbooks.',
  },
  rodHousing: {
    measure: 'Dial bore gauge with the bolts tightened as for running, in line with the beam.',
    note: 'Without shells. The parts and the gauge at one temperature.',
  },
  housingOutside: {
    measure: 'Caliper at the thinnest place of the eye: the bore plus twice the metal there.',
    note: 'A big end is no ring. This stands for one that yields as much.',
  },
  rodShellWall: {
    measure: 'Micrometer with a ball anvil, in the middle of the half shell.',
    note: 'Thinner towards the parting line, on purpose.',
  },
  rodShellWidth: { measure: 'Caliper.' },
  crushHeight: {
    measure:
      'Checking block at the checking load, or a feeler at the parting line with one bolt slack, which shows both halves together.',
    note: 'What one half is longer than half its bore. Never file it.',
  },
  rodClearance: {
    measure:
      'Shells in and bolts tightened, bore gauge zeroed on the journal itself, in line with the beam.',
    note: 'A soft strip shows one spot to about 0.013 mm. At 45 degrees the reading is greater by design.',
  },
  journalOutOfRound: { measure: 'Greatest less least diameter in one place along the journal.' },
  journalTaper: { measure: 'Diameter at one end of the journal less that at the other.' },
  bearingLoad: {
    measure: 'From the reversal load: the pull on the crankpin. Or from a cycle of loads.',
  },
  housingPoisson: { measure: 'Material table. It counts for little here.' },
  shellModulus: { measure: 'Material table: low-carbon steel.' },
  shellExpansion: { measure: 'Material table: low-carbon steel.' },
  crankExpansion: { measure: 'Material table: steel, or cast iron.' },
  ambientTemperature: {
    measure: 'Thermometer in the air the engine breathes.',
  },
  coldStartTemperature: { measure: 'The coldest morning on which the engine will be turned.' },
  crankpinTemperature: {
    measure:
      'Assumed, a few kelvin above the rod: the heat is made in the film and the pin is cooled least.',
  },
  fitDiameter: {
    measure: 'The drawing’s size, without its tolerance. It chooses the step of the table.',
  },
  cylinders: {
    measure: 'Count them. All are taken as alike.',
  },
  crankInertia: {
    measure:
      'Bifilar or trifilar swing, or a maker’s figure. Bare: no damper, no flywheel, plugs in.',
    note: 'The part hangs with the axis it will turn about upright, midway between the wires.',
  },
  damperInertia: {
    measure:
      'Swing the whole damper, ring and hub. The ring turns with the hub but for its small twist.',
  },
  clutchInertia: {
    measure:
      'Swing cover and plates together. With the clutch closed the gearbox input turns too: add it here.',
  },
  flywheelInertia: {
    measure: 'Swing it on three wires, starter ring fitted.',
  },
  flywheelDiameter: {
    measure: 'Rule or caliper across the wheel, without the starter ring.',
  },
  flywheelInside: {
    measure: 'Caliper. Zero for a plain disc; the hole of a ring.',
  },
  flywheelThickness: {
    measure: 'Caliper at several radii; weigh the outer ones more, since they count more.',
  },
  flywheelDensity: {
    measure:
      'From a table for its metal: steel 7.85, grey iron 7.2, aluminium 2.7 g/cm³. Or mass over volume.',
  },
  speedRise: {
    measure: 'From a logged run: the slope of engine speed over time in the gear of interest.',
  },
  speedFrom: {
    measure: 'From the log: the speed a gear change drops to.',
  },
  speedTo: {
    measure: 'From the log: the speed at which the next change is made.',
  },
  netTorque: {
    measure: 'Engine stand or dynamometer at steady speed, near the middle of the range.',
  },
  gearRatio: {
    measure: 'Count the teeth.',
  },
  finalDrive: {
    measure: 'Count the teeth.',
  },
  tyreRadius: {
    measure: 'Roll the loaded car through ten turns of a wheel and divide the distance by 20π.',
  },
  wheelInertia: {
    measure:
      'Swing one on three wires, or take 0.8 of its mass times its radius squared as a first guess.',
  },
  carMass: {
    measure: 'Corner scales, driver and fuel aboard.',
  },
  drivelineEfficiency: {
    measure: 'From the literature: 0.86 to 0.96. Rarely measured.',
  },
  engineInertia: {
    measure:
      'The sum that the first calculator of the rotating-inertia page gives, or a maker’s figure.',
  },
  energySwing: {
    measure:
      'Area between the turning-moment curve and its mean, from its greatest shortage to its greatest surplus.',
    note: '60 J is an assumed value for the example at idle, about one cylinder’s work.',
  },
  meanSpeed: {
    measure: 'From the log, or the idle speed that was set.',
  },
  swingMass: {
    measure: 'Scale. Weigh exactly what hangs on the wires, without the platform.',
  },
  swingCount: {
    measure:
      'Count whole swings, to and fro, starting with nought at the first passage through the middle.',
    note: 'Twenty or more, and no further than 10° to either side.',
  },
  swingTime: {
    measure:
      'Stop-watch, at the passage through the middle, where the part is fastest. Three tries or more; enter their mean.',
  },
  swingSpacing: {
    measure:
      'Caliper, from wire to wire through the axis, and half of that. On a knife edge: from the edge to the centre of gravity, found by balancing the part.',
  },
  swingWire: {
    measure: 'Tape, between the two points that hold one wire.',
  },
  platformMass: {
    measure: 'Scale, the wire clamps included.',
  },
  platformTime: {
    measure: 'Stop-watch, as with the part, as many swings.',
  },
  edgeDistance: {
    measure:
      'Caliper: from the highest point inside the small-end bore to the farthest point inside the big-end bore.',
  },
  smallEndTime: {
    measure: 'Stop-watch over all swings, the rod hung on a knife edge in the small-end bore.',
  },
  bigEndTime: {
    measure: 'The same, turned over, hung in the big-end bore.',
  },
  rodSwingCount: {
    measure: 'Count whole swings, as many from each end.',
  },
  ambientPressure: {
    measure: 'Barometer in the shop or on the hill, not corrected to sea level.',
  },
  compressionRatio: {
    measure:
      'From measured volumes: swept and clearance volume together over the clearance volume.',
  },
  volumetricEfficiency: {
    measure: 'From an air meter, or set so that the torque agrees.',
    note: 'Fresh charge, air with its fuel, over the swept volume full of air at ambient state. An air meter counts the air alone: multiply by 1 + 1/(λ·AFR), about 1.08 for a rich petrol charge.',
  },
  manifoldPressure: {
    measure: 'Absolute pressure sensor in the manifold or the port, its mean.',
  },
  exhaustPressure: {
    measure: 'Absolute pressure sensor in the exhaust port, its mean.',
  },
  intakeOpen: {
    measure: 'Degree disc, at the lift stated on the cam card.',
    note: 'With lash and ramps the flow begins and ends some degrees nearer the dead centre than the first movement.',
  },
  intakeClose: {
    measure: 'Degree disc, at the lift stated on the cam card.',
  },
  exhaustOpen: {
    measure: 'Degree disc, at the lift stated on the cam card.',
  },
  burnStart: {
    measure: 'Assumed: the spark advance less 8 to 15 degrees.',
  },
  burnDuration: {
    measure: 'Fitted to a measured trace, or assumed.',
  },
  wiebeEfficiency: {
    measure: 'A convention: 5 burns 99.3 % by the end, 6.91 burns 99.9 %.',
  },
  wiebeForm: {
    measure: 'Fitted to a measured trace; 2 is the usual assumption.',
  },
  compressionExponent: {
    measure: 'The slope of log pressure over log volume on a motored trace.',
  },
  expansionExponent: {
    measure: 'The slope of log pressure over log volume late in the expansion of a measured trace.',
  },
  burnedGamma: {
    measure: 'Gas tables at about 2000 K.',
  },
  heatLoss: {
    measure: 'Assumed; set so that the torque agrees with the dynamometer.',
  },
  airFuelLambda: {
    measure: 'Lambda probe.',
    note: 'Below one is rich.',
  },
  stoichRatio: {
    measure: 'Data of the fuel.',
  },
  heatingValue: {
    measure: 'Data of the fuel.',
  },
  combustionEfficiency: {
    measure: 'Assumed.',
    note: 'In a rich charge only the fuel for which there is air counts as burnable.',
  },
  residualFraction: {
    measure: 'Assumed: a few hundredths at full throttle.',
  },
  chargeTemperature: {
    measure: 'Assumed; warmer than the port by what walls and old gas give.',
  },
  peakVariation: {
    measure: 'Standard deviation over mean of the peaks of a hundred cycles or more.',
  },
  frictionMep: {
    measure: 'Motoring the warm engine, or what is missing between indicated and measured torque.',
  },
  ringSideClearance: {
    measure: 'Feeler between ring and groove all round, or groove gauge less ring height.',
    note: 'A ring thicker than its groove has none: it is refused.',
  },
  ringBackClearance: {
    measure: 'Groove depth less radial thickness plus half the land’s clearance.',
  },
  topLandHeight: {
    measure: 'Caliper from the crown’s edge to the top groove.',
  },
  topLandClearance: {
    measure: 'Bore gauge and micrometer, cold.',
  },
  secondLandHeight: {
    measure: 'Caliper between the top and the second groove.',
  },
  secondLandClearance: {
    measure: 'Bore gauge and micrometer, cold.',
  },
  ringDensity: {
    measure: 'From the material.',
  },
  portCount: {
    measure: 'Count.',
    note: 'None is an answer too.',
  },
  portDiameter: {
    measure: 'Shank of the drill that just passes.',
    note: 'Has no effect where there are no ports.',
  },
  portPlugged: {
    measure: 'Supposed: how far carbon may have closed the holes.',
  },
  dischargeCoefficient: {
    measure: 'From the literature.',
  },
  faceFactor: {
    measure: 'From the profile of the face: the share of its height below the line of contact.',
  },
  flankFactor: {
    measure:
      'From where the flank seals: one at its inner edge, a half for a straight fall across it.',
  },
  ringTemperature: {
    measure: 'Assumed.',
    note: 'The gas behind the ring is taken to be as warm as the ring.',
  },
  ringExpansion: {
    measure: 'From the material.',
  },
  boreExpansion: {
    measure: 'From the material of bore or liner.',
  },
  boreTemperature: {
    measure: 'Probe in the wall, or assumed.',
  },
  upstreamPressure: {
    measure: 'Absolute pressure sensor.',
  },
  downstreamPressure: {
    measure: 'Absolute pressure sensor.',
  },
  gasTemperature: {
    measure: 'Thermometer in the still gas.',
  },
  heatRatio: {
    measure: 'From a gas table; 1.4 for cool air.',
  },
  gasConstant: {
    measure: 'From a gas table; 287 for air.',
  },
  orificeArea: {
    measure: 'A drilled hole has π/4 of its diameter squared.',
  },
  vesselVolume: {
    measure: 'Filled with a liquid and weighed, or calculated.',
  },
  targetPressure: {
    measure: 'Chosen.',
  },
};
