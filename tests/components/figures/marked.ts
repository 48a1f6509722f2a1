/**
 * What a figure marks (`data-q`) with the numbers of the example, by names of its calculator in the order of the
 * alphabet. A figure that is drawn anew marks anew: then its lines here are written anew by hand, and what stands under
 * `without` is looked at first.
 */
export interface Marked {
  /** How many marks stand in its drawings, and how many beside them: in tables, at sliders, buttons and choices. */
  readonly marks: readonly [number, number];
  /** The names in its drawings. */
  readonly drawn: string;
  /** Names that stand beside the drawings alone. */
  readonly beside?: string;
  /** What the calculator asks and answers and the figure has no part for. */
  readonly without?: string;
}

export const markedBy: Readonly<Record<string, Marked>> = {
  'bobweight-bar': {
    marks: [11, 9],
    drawn:
      'bigEndMass bigEnds bobweight lockMass locksCarried oil oilMass pinMass pinsCarried ' +
      'pistonMass pistonsCarried reciprocating reciprocatingFraction ringMass ringsCarried ' +
      'rotating shellMass shells smallEndMass smallEndsCarried',
    without: 'bobweightShare halfBobweight',
  },
  'campbell-diagram': {
    marks: [41, 8],
    drawn:
      'firingRate firstCritical firstFrequency maxSpeed nearCritical nearOrder secondCritical ' +
      'secondFrequency',
    without: 'crankLayout damperInertia flywheelInertia throwInertia throwStiffness',
  },
  'clearance-temperature': {
    marks: [58, 4],
    drawn:
      'clearance clearanceCold clearanceCurve clearanceHot crankpinDiameter housingOutside ' +
      'loose pressureCold pressureCurve pressureHot pressureShop rodClearance rodHousing ' +
      'rodShellWall rodTemperature',
    without: 'crankpinTemperature gaugeDifference greatestClearance leastClearance',
  },
  'counter-turning': {
    marks: [10, 8],
    drawn:
      'backward balanceMass bankAngle crankAngle forward residualGreatest residualLeast stroke',
    beside: 'reciprocatingFraction residual',
    without: 'forwardLeft inertiaForce reciprocatingMass rodsPerPin rotatingMass',
  },
  'counterweight-holes': {
    marks: [38, 7],
    drawn:
      'counterweightAngle counterweightRadius counterweightWidth depth drill heavyAngle ' +
      'holeAngleLimit holeCount holeDiameter holeKind holeSpacing keepOutRadius middle tipDepth',
    beside: 'left unbalanceRead',
    without: 'most',
  },
  'counterweight-slugs': {
    marks: [40, 8],
    drawn:
      'besideWall counterweightRadius counterweightWidth keepOutRadius massGain pull rimWall ' +
      'slugCount slugDiameter slugLength slugMass slugRadius',
    beside: 'left overPull perSlug rimStress slugInterference warmInterference',
    without: 'addedUnbalance slugClass slugsNeeded',
  },
  'crank-layout': {
    marks: [29, 3],
    drawn: 'bankAngle bobweights crankLayout pins places rodsPerPin',
    without:
      'bore displacement maxSpeed meanSpeed missedShiftSpeed overRevRise reciprocatingFraction ' +
      'rodLength stroke',
  },
  'crank-modes': {
    marks: [15, 2],
    drawn:
      'clutchInertia damperInertia firstFrequency firstNode firstShape flangeStiffness ' +
      'flywheelInertia hubInertia noseStiffness throwInertia throwStiffness',
    without:
      'crankLayout firstCritical maxSpeed nearCritical nearOrder secondCritical secondFrequency',
  },
  'crank-throw': {
    marks: [12, 6],
    drawn: 'crankpinDiameter mainDiameter overlap share',
    beside: 'stroke',
    without: 'touchingStroke',
  },
  'factor-ellipse': {
    marks: [7, 6],
    drawn: 'coupleLeast coupleMost reciprocatingFraction',
    beside: 'crankLayout forceLeast forceMost',
    without: 'leastFactor maxSpeed pinBobweight reciprocatingMass rotatingMass stroke',
  },
  'gear-chain': {
    marks: [21, 6],
    drawn:
      'carMass engineInertia equivalentMass finalDrive gearRatio massFactor tyreRadius ' +
      'wheelInertia wheelMass',
    beside: 'drivingMass overrunMass',
    without: 'acceleration engineRise netTorque',
  },
  'grade-scale': {
    marks: [10, 6],
    drawn:
      'balanceGrade eccentricity floorGrade gradeReached maxSpeed permissible residualA residualB ' +
      'unbalanceFloor',
    beside: 'residual',
    without: 'bobweightsMass correctionA correctionB crankMass residualForce',
  },
  'groove-section': {
    marks: [30, 13],
    drawn:
      'behindShutCurve behindShutUnportedCurve behindUnportedCurve cylinderCurve landShutCurve ' +
      'landShutUnportedCurve landUnportedCurve peakPressure portCount portDiameter ring1Height ' +
      'ring1Radial ringSideClearance shortfallUnported shutShortfall shutShortfallUnported',
    beside: 'tensionPressure',
    without: 'compressionRatio lag leak maxSpeed ringSeat shortfall',
  },
  'heavy-spot': {
    marks: [16, 5],
    drawn: 'angleOrigin angleSense crankTurns heavySpot lightSpot readingNames unbalanceAngle',
    beside: 'unbalanceRead',
    without: 'wrongSense wrongSide',
  },
  'inertia-shares': {
    marks: [7, 6],
    drawn:
      'bigEndsPart clutchInertia clutchRoad crankInertia crankRoad damperInertia damperRoad ' +
      'equivalentMass flywheelInertia flywheelPart flywheelRoad gearRatio movingRoad ' +
      'reciprocatingPart totalInertia',
    without: 'energyHeld netTorque riseTime wheelShare',
  },
  'inertia-torque': {
    marks: [12, 2],
    drawn: 'meanTorque torqueAmplitude torqueCurve',
    without:
      'clutchInertia crankInertia damperInertia energyHeld equivalentMass flywheelInertia ' +
      'flywheelPart gearRatio netTorque riseTime totalInertia wheelShare',
  },
  'load-speed': {
    marks: [31, 11],
    drawn:
      'bigEndMass bossPull capMass commonSpeed crankpinPull eyePull maxSpeed missedShiftPull ' +
      'missedShiftSpeed partingPull pinMass pistonMass pullCurve rodMassAbove shankPull ' +
      'smallEndMass',
    beside: 'commonPull',
    without: 'rodLength stroke',
  },
  'matched-sets': {
    marks: [118, 15],
    drawn:
      'bigEndMasses listedSpread mostOff pinMasses pinSpread pistonMasses smallEndMasses spread ' +
      'targetSpread totals',
    without: 'cutDepth unproved',
  },
  'material-bars': {
    marks: [17, 6],
    drawn: 'marginMass rodMaterial',
    beside: 'sectionMass stretchMass',
    without:
      'bothMass materialDensity materialHotYield materialModulus maxSpeed peakPressure ' +
      'reciprocatingMass rodLength stroke',
  },
  mechanism: {
    marks: [34, 10],
    drawn:
      'acceleration accelerationBottom accelerationCurve accelerationTop boreOffset crankAngle ' +
      'displacement displacementCurve peakSpeed pinOffset pistonSpeed rodLength speedCurve ' +
      'stroke travel',
    beside: 'bottomAngle halfStrokeAngle peakSpeedAngle',
    without: 'maxSpeed meanSpeed',
  },
  'pin-section': {
    marks: [46, 8],
    drawn:
      'bending bossGap bossPressure mass ovalClose ovalization pinBore pinDiameter pinLength ' +
      'pushLoad smallEndPressure smallEndWidth',
    beside: 'pinTaperBore',
    without: 'maxSpeed peakPressure pistonMass shear',
  },
  'pin-sizes': {
    marks: [20, 7],
    drawn: 'bearingLoad crankpinDiameter pinSpeedCommon projectedArea rodShellWidth unitLoad',
    beside: 'commonSpeed pinSpeed',
    without: 'bigEnd mainDiameter mainSpeed maxSpeed overlap stroke',
  },
  'plane-arrows': {
    marks: [22, 4],
    drawn:
      'bearingSpan movedA movedAngleA movedAngleB movedB newPlaneA newPlaneB planeA planeAngleA ' +
      'planeAngleB planeB planeUnbalanceA planeUnbalanceB',
    without: 'coupleUnbalance staticUnbalance',
  },
  'pressure-curve': {
    marks: [36, 6],
    drawn:
      'burnStart exhaustOpen intakeClose intakeOpen netMep peakAngle peakPressure pressureCurve ' +
      'volumeCurve',
    beside: 'closingPressure openingPressure startPressure',
    without:
      'bore closingRatio compressionRatio stroke torque torqueSpeed volumetricEfficiency ' +
      'worstPeak',
  },
  'quoted-line': {
    marks: [6, 5],
    drawn: 'bobweight impliedBigEnd impliedShare impliedSmallEnd rodMass unsaidSwing',
    without: 'pinMass pistonMass reciprocatingFraction ringMass',
  },
  'ring-shapes': {
    marks: [53, 9],
    drawn: 'bore contactPressure ring1FreeGap ring1Gap ring1Height ring1Radial tangentialForce',
    without: 'conformability fittingStress followedOval placeStress ring1Modulus',
  },
  'rod-lean': {
    marks: [20, 7],
    drawn: 'crankAngle downLean downThrust rodAngle rodLength stroke thrust upLean upThrust',
    beside: 'downAngle upAngle',
    without: 'boreOffset pinOffset',
  },
  'rod-scales': {
    marks: [18, 4],
    drawn:
      'bigEndMass bigEndReadings bigEndShare centreFromBigEnd endSum rodMass smallEndMass ' +
      'smallEndReadings',
    without: 'closure closureTolerance',
  },
  'rod-section': {
    marks: [20, 12],
    drawn: 'area pull pullStress rodLength shankHeight shankWidth',
    beside: 'flangeThickness lowSpeedStress webThickness whipPlace whipStress',
    without: 'amplitude bucklingMargin clearanceLeft maxSpeed peakPressure',
  },
  'shaking-forces': {
    marks: [50, 7],
    drawn:
      'crankLayout cylinderSpacing heldCouple inertiaForce primaryCouple reciprocatingMass ' +
      'rodLength secondaryCouple secondaryOne stroke',
    beside: 'crankAngle heldForce primaryForce reciprocatingFraction secondaryForce',
    without: 'maxSpeed',
  },
  'speed-cycle': {
    marks: [13, 4],
    drawn: 'coefficient energySwing engineInertia highest lowest meanSpeed spread',
  },
  'swing-rig': {
    marks: [24, 7],
    drawn: 'gyration partInertia swingMass swingPeriod swingRig swingSpacing swingWire',
    beside: 'swingTime',
    without: 'swingCount',
  },
};
