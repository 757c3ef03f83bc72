package loopwright.catalog.part;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Limits;
import loopwright.catalog.basis.Purchase;
import loopwright.quantity.Dimension;

/** A fan: frame, curve at full speed, sound and current. */
public record Fan(
        String id, String title, Optional<String> variantOf, Purchase buy, Frame frame, Air air, Electric electric)
        implements Part {

    /** Frame size (a size of {@link loopwright.catalog.basis.Pattern}) and thickness. */
    public record Frame(
            int sizeMm, @Limits(min = 10, max = 40) Dimension thicknessMm, int massG) {}

    /**
     * What it moves at full speed in air of 1.2 kg/m³.
     *
     * @param curve pressure against flow, falling, from no flow to no pressure
     */
    public record Air(
            @Limits(min = 300, max = 6000) double speedMaxRpm,
            @Limits(min = 5, max = 100) double dutyMinPercent,
            List<CurvePoint> curve,
            @Limits(min = 0, max = 70) double noiseMaxDBA) {}

    /** One point of the curve. */
    public record CurvePoint(double flowM3PerH, double pressurePa) {}

    /** Current at 12 V. */
    public record Electric(double currentA, double startCurrentA) {}
}
