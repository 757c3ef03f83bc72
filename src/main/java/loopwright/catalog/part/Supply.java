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
        Output output)
        implements Part {

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

    /** How much of what it draws it delivers, at a share of its rating. */
    public record EfficiencyPoint(
            @Limits(min = 1, max = 100) double loadPercent,
            @Limits(min = 40, max = 99) double efficiencyPercent) {}
}
