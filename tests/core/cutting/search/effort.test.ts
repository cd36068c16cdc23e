import { expect, it } from 'vitest';
import { Effort } from '../../../../src/core/cutting/search/effort';

it('Effort ends by the number of evaluations, for a while and in all', () => {
  const effort = new Effort(5000, { stopped: false });
  effort.until(2000);
  effort.spent = 1999;
  expect(effort.goesOn()).toBe(true);
  effort.spent = 2000;
  expect(effort.goesOn()).toBe(false);
  effort.until(1e9);
  expect(effort.goesOn()).toBe(true);
  effort.spent = 5000;
  expect(effort.goesOn()).toBe(false);
});

it('Effort ends within a thousand evaluations of being told to', () => {
  const token = { stopped: false };
  const effort = new Effort(1e9, token);
  expect(effort.goesOn()).toBe(true);
  token.stopped = true;
  effort.spent += 1000;
  expect(effort.goesOn()).toBe(false);
  // Once stopped it stays so.
  token.stopped = false;
  effort.spent += 1000;
  expect(effort.goesOn()).toBe(false);
});

it('Effort tells how far it has come from time to time', () => {
  const told: number[] = [];
  const effort = new Effort(3e6, { stopped: false }, (spent) => told.push(spent));
  for (; effort.goesOn(); effort.spent += 1000);
  expect(told.length).toBeGreaterThan(3);
  expect(told).toEqual([...told].sort((a, b) => a - b));
});
