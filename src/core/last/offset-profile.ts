import { Problem } from '../problem';
import { atLength, type Profile } from './profile';

/**
 * The under face of layers that follow the last: the bottom's curve moved by their thickness along its normal and set
 * down again so that it stands on the ground at the tread. Lengths stay those along the last, as the pieces are cut.
 * @throws Problem where the layers are thicker than a hollow's radius.
 */
export function offsetProfile(profile: Profile, thickness: number): Profile {
  if (thickness === 0) return profile;
  const n = profile.s.length;
  const x = new Float64Array(n);
  const z = new Float64Array(n);
  const tread = atLength(profile, profile.tread);
  const down = thickness * Math.cos((tread.slope * Math.PI) / 180);
  let before = -Infinity;
  for (let i = 0; i < n; i++) {
    const angle = (profile.slope[i]! * Math.PI) / 180;
    const moved = profile.x[i]! - thickness * Math.sin(angle);
    // At a hollow corner the moved curve steps back and crosses itself: there the under face has a corner too, and the
    // loop is left out. Only a fold of the curve itself is an error.
    if (moved < before && profile.s[i]! > profile.s[i - 1]!) {
      throw new Problem(
        'unavailable',
        { argument: 'thickness' },
        `layers of ${thickness} mm do not go into the last's hollow; take thinner ones`,
      );
    }
    before = moved;
    const height = profile.z[i]! - thickness * Math.cos(angle) + down;
    const inLoop = i > 0 && moved < x[i - 1]!;
    x[i] = inLoop ? x[i - 1]! : moved;
    z[i] = inLoop ? Math.min(height, z[i - 1]!) : height;
  }
  return { ...profile, x, z };
}
