package loopwright.loop.exchange;

import java.util.List;

/**
 * A radiator's core in air of one state: what it resists and what its air side conducts, against the speed on its face.
 *
 * <p><b>Units.</b> m/s, Pa, W/K. The air side's value is of the whole radiator: overall fin efficiency × transfer coefficient ×
 * area.
 *
 * <p><b>Valid for</b> face speeds of 0 and more; past 8 m/s straight on. The loss rises strictly from 0; the air side never
 * falls and does not end at 0 without flow.
 *
 * <p><b>Accuracy.</b> Tabulated once; within 1e-3 of the formulas, which scatter by ±15 % ({@link LouvreFin}).
 */
public final class CoreInAir {

    /** Face speed up to which the table goes, m/s: past any fan on a radiator; common practice, no source. */
    static final double FACE_SPEED_MAX_M_PER_S = 8;

    private final RisingTable loss;
    private final RisingTable airSide;

    CoreInAir(AirLoss loss, AirSide airSide) {
        this.loss = new RisingTable(loss::lossPa, loss.bendsMPerS(), FACE_SPEED_MAX_M_PER_S);
        this.airSide = new RisingTable(airSide::conductanceWPerK, List.of(airSide.bendMPerS()), FACE_SPEED_MAX_M_PER_S);
    }

    /**
     * Returns the pressure it takes to drive air through the core, Pa.
     *
     * @param faceSpeedMPerS at least 0
     * @throws IllegalArgumentException if it is below 0, or NaN
     */
    public double lossPa(double faceSpeedMPerS) {
        return loss.at(faceSpeedMPerS);
    }

    /**
     * Returns what the air side of the whole radiator conducts, W/K.
     *
     * @param faceSpeedMPerS at least 0
     * @throws IllegalArgumentException if it is below 0, or NaN
     */
    public double airSideWPerK(double faceSpeedMPerS) {
        return airSide.at(faceSpeedMPerS);
    }
}
