package loopwright.power.cable;

import loopwright.catalog.standard.Cabling.PlugSize;

/**
 * A hole that cables go through.
 *
 * @param at its middle
 * @param longHmm the long side of its free opening: what is cut less the grommet
 * @param shortHmm the short side of it
 */
public record Hole(String id, String title, PointHmm at, int longHmm, int shortHmm) {

    private static final double HMM_PER_MM = 100;

    /** Whether a plug passes. */
    public boolean passes(PlugSize plug) {
        return plug.longMm() * HMM_PER_MM <= longHmm && plug.shortMm() * HMM_PER_MM <= shortHmm;
    }

    /** Its free area, mm²; 0 where a grommet leaves nothing. */
    public double areaMm2() {
        return Math.max(0, longHmm) / HMM_PER_MM * (Math.max(0, shortHmm) / HMM_PER_MM);
    }
}
