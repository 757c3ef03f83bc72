package loopwright.catalog.part;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Limits;
import loopwright.catalog.basis.Purchase;
import loopwright.catalog.basis.SizeMm;
import loopwright.quantity.Dimension;

/** A power supply: length runs from its mains face to its plugs, then the plugs and their bend need room. */
public record Supply(
        String id,
        String title,
        Optional<String> variantOf,
        Purchase buy,
        SupplyForm form,
        SizeMm body,
        Dimension plugRoomMm,
        Output output,
        Optional<Rails> rails,
        List<Cable> cables,
        List<NoisePoint> noise,
        Optional<Integer> massG)
        implements Part {

    /** A supply that says nothing of rails, cables, noise at part load and mass. */
    public Supply(
            String id,
            String title,
            Optional<String> variantOf,
            Purchase buy,
            SupplyForm form,
            SizeMm body,
            Dimension plugRoomMm,
            Output output) {
        this(
                id,
                title,
                variantOf,
                buy,
                form,
                body,
                plugRoomMm,
                output,
                Optional.empty(),
                List.of(),
                List.of(),
                Optional.empty());
    }

    /** Forms with a published face and hole pattern. */
    public enum SupplyForm {
        /** 150 × 86 face. */
        ATX,
        /** 125 × 63.5 face, 100 long. */
        SFX,
        /** 125 × 63.5 face, 130 long. */
        SFX_L
    }

    /** What it delivers and through which plugs. */
    public record Output(
            @Limits(min = 100, max = 3000) double ratedW,
            int processorPlugs,
            int cardEightPinPlugs,
            int cardSixteenPinPlugs,
            int sataPlugs,
            @Limits(min = 0, max = 70) double noiseMaxDBA,
            List<EfficiencyPoint> efficiency) {}

    /**
     * What single rails bring.
     *
     * @param twelveVoltA on 12 V in all
     * @param lowW on 5 V and 3.3 V together
     * @param surgePercent of the rating, what it stands for 100 µs; left out: built before surges were asked for
     * @param sixteenPinW what its 16-pin plug is coded for, where it has one
     */
    public record Rails(
            @Limits(min = 1, max = 300) double twelveVoltA,
            @Limits(min = 0, max = 500) double lowW,
            @Limits(min = 100, max = 400) Optional<Integer> surgePercent,
            @Limits(min = 150, max = 600) Optional<Integer> sixteenPinW) {}

    /**
     * A cable with its plugs.
     *
     * @param plugs one after the other on it
     * @param lengthMm from the supply to the first plug
     * @param toNextMm from one plug to the next, where there is more than one
     * @param fixed whether it cannot be left out
     */
    public record Cable(
            Plug plug,
            @Limits(min = 1, max = 6) int plugs,
            @Limits(min = 50, max = 2000) double lengthMm,
            @Limits(min = 20, max = 600) Optional<Double> toNextMm,
            boolean fixed) {}

    /** How loud its own fan is at a share of its rating, dB(A) at 1 m. */
    public record NoisePoint(
            @Limits(min = 0, max = 100) double loadPercent,
            @Limits(min = 0, max = 70) double noiseDBA) {}

    /** How much of what it draws it delivers, at a share of its rating. */
    public record EfficiencyPoint(
            @Limits(min = 1, max = 100) double loadPercent,
            @Limits(min = 40, max = 99) double efficiencyPercent) {}
}
