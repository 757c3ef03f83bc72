package loopwright.catalog.part;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.PartPort;
import loopwright.catalog.basis.Purchase;
import loopwright.catalog.basis.SizeMm;
import loopwright.quantity.Dimension;

/** A pump, alone or built onto a reservoir. */
public record Pump(
        String id,
        String title,
        Optional<String> variantOf,
        Purchase buy,
        Kind kind,
        SizeMm body,
        Water water,
        Electric electric,
        Optional<Feed> feed,
        List<PartPort> ports,
        Optional<PartPort> fill,
        Optional<Integer> massG)
        implements Part {

    /** A pump that says nothing of its plug, ports and mass. */
    public Pump(
            String id,
            String title,
            Optional<String> variantOf,
            Purchase buy,
            Kind kind,
            SizeMm body,
            Water water,
            Electric electric) {
        this(
                id,
                title,
                variantOf,
                buy,
                kind,
                body,
                water,
                electric,
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    /** What feeds it, and what it draws while it starts. */
    public record Feed(Plug plug, double startCurrentA) {}

    /** Whether it brings its own reservoir. */
    public enum Kind {
        /** Needs a reservoir of its own place. */
        PUMP,
        /** Pump and reservoir in one body. */
        PUMP_RESERVOIR
    }

    /**
     * Water side.
     *
     * @param curve head against flow at full speed, falling
     * @param portRoomMm free room its fittings need beyond the far end of its length
     */
    public record Water(List<CurvePoint> curve, double coolantML, Dimension portRoomMm) {}

    /** One point of the curve. */
    public record CurvePoint(double flowLPerMin, double headKPa) {}

    /** Power drawn at full speed, how much of it ends in the coolant, and sound. */
    public record Electric(double powerW, double heatToCoolantW, double dutyMinPercent, double noiseMaxDBA) {}
}
