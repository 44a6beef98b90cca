package lanewright.drainage.culvert;

import lanewright.drainage.channel.Check;

/**
 * One barrel of a culvert.
 *
 * @param material what it is made of
 * @param inside its inside
 * @param n Manning's roughness
 * @param wall from inside to outside at the crown, corrugation included, m
 */
public record Barrel(Material material, BarrelShape inside, double n, double wall) {

    /**
     * @throws IllegalArgumentException if roughness or wall is out of range
     */
    public Barrel {
        Check.roughness(n);
        Check.notNegative("wall of a barrel, m,", wall);
    }
}
