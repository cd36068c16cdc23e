import { describe, expect, it } from 'vitest';
import { PlanMemory } from '../../../src/core/plan/plan-memory';

const LARGE = 10e6;

/** What a plan of ten parts keeps and finds, of which so many are others than those of the plans before. */
function plan(memory: PlanMemory, number: number, others: number): number {
  memory.next();
  let made = 0;
  for (let part = 0; part < 10; part++) {
    const key = part < others ? `${part} of plan ${number}` : `${part}`;
    if (memory.find(key)) continue;
    memory.keep(key, {}, LARGE);
    made += 1;
  }
  return made;
}

describe('PlanMemory', () => {
  it('holds three generations of the plan at hand and no more, however many plans there were', () => {
    const memory = new PlanMemory();
    const held: number[] = [];
    for (let number = 1; number <= 30; number++) {
      plan(memory, number, 10);
      held.push(memory.bytes);
    }
    expect(held.every((bytes) => bytes < 3.01 * 10 * LARGE)).toBe(true);
    expect(held.at(-1)).toBeGreaterThan(2.8 * 10 * LARGE);
    // The two plans before are there still, older ones are not.
    expect([30, 29, 28, 27].map((number) => memory.find(`4 of plan ${number}`) !== undefined)).toEqual([
      true,
      true,
      true,
      false,
    ]);
  });

  it('keeps what plan after plan uses, whatever a part of them changes', () => {
    const memory = new PlanMemory();
    expect(plan(memory, 1, 1)).toBe(10);
    for (let number = 2; number <= 60; number++) expect(plan(memory, number, 1)).toBe(1);
  });

  it('is not misled by plans that were not worked out', () => {
    const memory = new PlanMemory();
    plan(memory, 1, 0);
    for (let i = 0; i < 5; i++) memory.next();
    for (let i = 0; i < 5; i++) memory.keep(`other ${i}`, {}, LARGE);
    expect(plan(memory, 2, 0)).toBe(0);
  });

  it('never gives up what the plan at hand uses, however large it is', () => {
    const memory = new PlanMemory();
    memory.next();
    for (let part = 0; part < 80; part++) memory.keep(`${part}`, {}, LARGE);
    expect(memory.find('0')).toBeDefined();
    expect(memory.bytes).toBeGreaterThan(80 * LARGE);
    // Beside so large a plan no other finds room.
    memory.next();
    for (let part = 0; part < 80; part++) memory.keep(`${part} anew`, {}, LARGE);
    expect(memory.bytes).toBeLessThan(81 * LARGE);
  });

  it('lets small plans keep many generations', () => {
    const memory = new PlanMemory();
    for (let number = 1; number <= 20; number++) {
      memory.next();
      memory.keep(`plan ${number}`, {}, 1e5);
    }
    expect(memory.find('plan 1')).toBeDefined();
  });
});
