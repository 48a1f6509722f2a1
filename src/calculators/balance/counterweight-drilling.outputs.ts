import { direction, length, mass, maybe, percent, ratio, unbalance } from '../output.ts';

/** What is told of equal holes in a counterweight. */
export const drillingOutputs = {
  depth: length('h', 'Depth of each hole, to the full diameter', {
    phrase: 'To its full diameter each hole',
    main: true,
  }),
  middle: direction('β_m', 'Middle of the holes from throw 1, clockwise seen from the nose', {
    phrase: 'Clockwise from throw 1, seen from the nose, the middle of the holes',
    main: true,
  }),
  left: unbalance('U_left', 'Left uncorrected by this plan', {
    phrase: 'What the plan leaves uncorrected',
    main: true,
  }),
  drill: length('d', 'Drill of the list'),
  tipDepth: length('h_tip', 'Depth to the tip of the point'),
  firstHole: direction('β_1', 'First hole from throw 1'),
  lastHole: direction('β_n', 'Last hole from throw 1'),
  perHole: unbalance('U_1', 'One hole takes'),
  taken: unbalance('U_all', 'All holes together take'),
  spread: ratio('k_n', 'Of holes in one direction these are worth'),
  most: unbalance('U_most', 'The most these holes can take, at the limit of depth'),
  pointShare: percent('q_p', 'Of a hole, taken by the drill’s point'),
  rimLoss: unbalance('U_rim', 'Missing from a hole because the rim is curved'),
  holeMass: mass('m_1', 'Metal out of one hole'),
  allMass: mass('m_all', 'Metal out of all holes'),
  rimMass: mass('m_R', 'The reading as a mass at the rim'),
  wall: maybe(length('t', 'Least metal between two holes')),
  leftAngle: maybe(direction('β_left', 'Heavy spot of what is left, from throw 1')),
} as const;
