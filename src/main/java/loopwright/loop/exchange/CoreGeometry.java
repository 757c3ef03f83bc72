package loopwright.loop.exchange;

import java.util.function.UnaryOperator;
import loopwright.catalog.part.Radiator;

/**
 * Measures of a whole radiator's core, worked out of its catalogue entry.
 *
 * <p><b>Units.</b> SI.
 *
 * <p><b>Valid for</b> cores of equal sections side by side, flat tubes along the row of fans, one fin height. The number of tubes
 * across the face is the nearest whole one. Rows of tubes stand edge to edge and share the core's depth; fins are as deep as
 * the core. What a fold adds to a fin's area, and the louvres' own edges, are left out.
 *
 * @param faceAreaM2 of all sections
 * @param freeShare smallest free section over the face, dimensionless
 * @param airAreaM2 of fins and tubes, in the air
 * @param finShare of the fins in that area, dimensionless
 */
record CoreGeometry(
        LouvreFin fin, double faceAreaM2, double freeShare, double airAreaM2, double finShare, TubeBank tubes) {

    private static final double M_PER_MM = 1e-3;

    private static final double M_PER_INCH = 0.0254;

    /**
     * The core of a radiator.
     *
     * @throws IllegalArgumentException if the measures are no core's
     */
    static CoreGeometry of(Radiator radiator, Radiator.Fins fins, Radiator.Tubes tubes) {
        Radiator.Core core = radiator.core();
        int sizeMm = radiator.pattern().sizeMm();
        double sectionM2 = SectionFace.areaM2(sizeMm);
        double faceM2 = radiator.pattern().fans() * sectionM2;
        double depthM = core.depthMm() * M_PER_MM;
        double heightM = fins.heightMm() * M_PER_MM;
        double pitchM = heightM + tubes.thicknessMm() * M_PER_MM;
        LouvreFin fin = new LouvreFin(
                new LouvreFin.Louvre(
                        fins.louvreAngleDeg(), fins.louvrePitchMm() * M_PER_MM, fins.louvreLengthMm() * M_PER_MM),
                new LouvreFin.Fin(M_PER_INCH / core.finsPerInch(), heightM, fins.thicknessMm() * M_PER_MM, depthM),
                new LouvreFin.Tubes(pitchM, tubes.thicknessMm() * M_PER_MM));
        double gapM = fin.fin().pitchM() - fin.fin().thicknessM();
        double cellM2 = fin.fin().pitchM() * pitchM;
        double finM2 = 2 * heightM * depthM;
        double bareM2 = 2 * gapM * depthM;
        TubeBank bank = TubeBank.of(
                tubes,
                new TubeBank.Place(
                        sectionM2 / (sizeMm * M_PER_MM),
                        radiator.pattern().fans() * sizeMm * M_PER_MM,
                        depthM / core.tubeRows(),
                        core.tubeRows()),
                pitchM,
                fins.conductivityWPerMK());
        return new CoreGeometry(
                fin,
                faceM2,
                heightM * gapM / cellM2,
                faceM2 * (finM2 + bareM2) / cellM2,
                finM2 / (finM2 + bareM2),
                bank);
    }

    /** Face speed, m/s, of a Reynolds number on the louvre pitch. */
    UnaryOperator<Double> faceSpeedOf(AirProperties air) {
        double speedAtOne = air.kinematicViscosityM2PerS() / fin.louvre().pitchM() * freeShare;
        return reynolds -> reynolds * speedAtOne;
    }
}
