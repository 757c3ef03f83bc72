package loopwright.loop.exchange;

import java.util.List;
import loopwright.loop.air.Core;

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
public final class CoreInAir implements Core {

    /** Face speed up to which the table goes, m/s: past any fan on a radiator; common practice, no source. */
    static final double FACE_SPEED_MAX_M_PER_S = 8;

    private final RisingTable loss;
    private final RisingTable airSide;
    private final double lossFactor;

    CoreInAir(AirLoss loss, AirSide airSide) {
        this.loss = new RisingTable(loss::lossPa, loss.bendsMPerS(), FACE_SPEED_MAX_M_PER_S);
        this.airSide = new RisingTable(airSide::conductanceWPerK, List.of(airSide.bendMPerS()), FACE_SPEED_MAX_M_PER_S);
        this.lossFactor = 1;
    }

    private CoreInAir(RisingTable loss, RisingTable airSide, double lossFactor) {
        this.loss = loss;
        this.airSide = airSide;
        this.lossFactor = lossFactor;
    }

    /** The same core resisting so many times as much: for what its loss may be off by. */
    public CoreInAir scaled(double factor) {
        return new CoreInAir(loss, airSide, lossFactor * factor);
    }

    /**
     * Returns the pressure it takes to drive air through the core, Pa.
     *
     * @param faceSpeedMPerS at least 0
     * @throws IllegalArgumentException if it is below 0, or NaN
     */
    @Override
    public double lossPa(double faceSpeedMPerS) {
        return lossFactor * loss.at(faceSpeedMPerS);
    }

    @Override
    public double slopePaSPerM(double faceSpeedMPerS) {
        return lossFactor * loss.slopeAt(faceSpeedMPerS);
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
