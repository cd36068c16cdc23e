import { itemAt } from '../item-at';
import { Problem } from '../problem';
import type { Last, SizeGroup } from './last';

/**
 * Heel height of a last in a size of its own system, mm: held within a group of sizes (common practice), stepping from
 * group to group.
 * @throws Problem for a size, or a base size, that is in none of the groups.
 */
export function heelInSize(
  last: Pick<Last, 'heelHeight' | 'heelPerGroup' | 'sizeGroups' | 'baseSize'>,
  size: number,
): number {
  const { sizeGroups, heelPerGroup, heelHeight, baseSize } = last;
  if (sizeGroups.length === 0 || heelPerGroup === 0) return heelHeight;
  const [base, own] = [groupOf(sizeGroups, baseSize), groupOf(sizeGroups, size)];
  return heelHeight + (own - base) * heelPerGroup;
}

function groupOf(groups: readonly SizeGroup[], size: number): number {
  // A size between two marked ones, come from another system, belongs to the group that it is nearest to.
  const distance = ({ from, to }: SizeGroup) => Math.max(from - size, size - to, 0);
  const nearest = groups.reduce((best, group, i) => (distance(group) < distance(itemAt(groups, best)) ? i : best), 0);
  if (distance(itemAt(groups, nearest)) < 1) return nearest;
  throw new Problem('invalid', { argument: 'size groups' }, `size ${size} is in none of them; add it to one`);
}
