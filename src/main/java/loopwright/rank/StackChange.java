package loopwright.rank;

import java.util.Optional;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Radiator;
import loopwright.fit.Shape;
import loopwright.loop.air.AirDirection;
import loopwright.rank.Neighbours.Kind;

/** What kind of change one stack instead of another is. */
final class StackChange {

    private StackChange() {}

    /**
     * The kind, if it is a single change.
     *
     * <p>A larger, thicker or other radiator keeps the number of fan layers and, of equal size, the fan; a second layer keeps
     * radiator and fan; other fans keep radiator and layers.
     */
    static Optional<Kind> of(Fitting old, Shape shape, Radiator radiator, Fan fan) {
        Shape was = old.stack().shape();
        Radiator core = old.radiator().orElseThrow();
        int layers = shape.arrangement().fanLayers();
        int oldLayers = was.arrangement().fanLayers();
        boolean sameFan = fan.equals(old.fan());
        boolean sameCore = radiator.equals(core);
        if (sameCore) {
            if (layers > oldLayers) {
                return sameFan ? Optional.of(Kind.SECOND_LAYER) : Optional.empty();
            }
            return layers == oldLayers && !sameFan ? Optional.of(Kind.OTHER_FANS) : Optional.empty();
        }
        if (layers != oldLayers) {
            return Optional.empty();
        }
        if (area(shape) > area(was)) {
            boolean newSize = shape.pattern().sizeMm() != was.pattern().sizeMm();
            return sameFan || newSize ? Optional.of(Kind.LARGER) : Optional.empty();
        }
        if (!sameFan || !shape.pattern().equals(was.pattern())) {
            return Optional.empty();
        }
        return Optional.of(shape.thicknessHmm() > was.thicknessHmm() ? Kind.THICKER : Kind.OTHER_CORE);
    }

    private static int area(Shape shape) {
        return shape.pattern().fans()
                * shape.pattern().sizeMm()
                * shape.pattern().sizeMm();
    }

    /** The change in words. */
    static String words(Kind kind, Fitting fitting) {
        String mount = fitting.stack().frame().mount().id();
        String fans = fitting.fans() + " " + fitting.fan().id();
        String radiator = fitting.radiator().map(Radiator::id).orElse("");
        return switch (kind) {
            case LARGER -> mount + ": larger, " + radiator + " with " + fans;
            case THICKER -> mount + ": thicker, " + radiator;
            case SECOND_LAYER -> mount + ": push-pull";
            case OTHER_CORE -> mount + ": " + radiator;
            case OTHER_FANS -> mount + ": " + fans;
            case ONE_MORE -> mount + ": one more radiator, " + radiator + " with " + fans;
            case BARE_ROW -> mount + ": " + fans + " alone";
            case TURNED, MOD, PUMP, BLOCK, DUTY ->
                throw new IllegalArgumentException("not a change of a stack: " + kind);
        };
    }

    /** Which way. */
    static String way(AirDirection direction) {
        return direction == AirDirection.IN ? ", blowing in" : ", blowing out";
    }
}
