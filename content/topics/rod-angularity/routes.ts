import { defineRoutes } from '../../../src/checks/route.ts';

/** Other ways to the answers of this topic; each is taken by the tests that name it. */
export const routes = defineRoutes({
  everyAngle: {
    kind: 'second route',
    say: 'The greatest lean of each stroke and its place, against looking at the rod of the exact motion at every hundredth of a degree.',
    legs: [
      'rod-angularity.downLean',
      'rod-angularity.upLean',
      'rod-angularity.downAngle',
      'rod-angularity.upAngle',
    ],
  },
  threeFourFive: {
    kind: 'closed form',
    say: 'A rod and a throw as 5 to 3 lean as the triangle with sides 3, 4 and 5: a side thrust of three quarters, without offset on either stroke.',
    legs: ['rod-angularity.downThrust', 'rod-angularity.upThrust'],
  },
});
