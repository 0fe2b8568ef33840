import { expect, test } from '@jest/globals';
import type { Celsius, Kelvins, Metres, SquareMetres } from '@lathwork/units';

const area = (lengthM: Metres, widthM: Metres): SquareMetres => lengthM * widthM;
const warmer = (airC: Celsius, byK: Kelvins): Celsius => airC + byK;

test('a quantity is a number, and the compiler keeps units apart', () => {
  const sideM: Metres = 3;
  const floorM2: SquareMetres = area(sideM, 2);
  const airC: Celsius = warmer(4, 2);
  expect([floorM2, airC]).toEqual([6, 6]);
  // Each line below is refused by the type check of the tests; if it ever were allowed, that check would fail.
  // @ts-expect-error square metres are not metres
  area(floorM2, sideM);
  // @ts-expect-error a temperature is not a difference of temperatures
  warmer(airC, airC);
  // @ts-expect-error metres are not square metres
  const wrong: SquareMetres = sideM;
  expect(wrong).toBe(3);
});
