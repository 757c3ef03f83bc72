package loopwright.oracle.brute;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Radiator;

/** A shape, or a bare row of fans, that has a position on a mount, and the real parts that make it. */
public final class BruteHung {
    private final Mount mount;
    private final BruteRun.Hanging hanging;
    private final BruteShape first;
    private final List<Real> real;

    /** Parts of one stack; a bare row has no radiator. */
    public record Real(Optional<Radiator> radiator, Fan fan) {}

    BruteHung(Mount mount, BruteRun.Hanging hanging, BruteShape first, List<Real> real) {
        this.mount = mount;
        this.hanging = hanging;
        this.first = first;
        this.real = List.copyOf(real);
    }

    /** Its mount. */
    public Mount mount() {
        return mount;
    }

    /** The shape's text. */
    public String text() {
        return hanging.text();
    }

    /** Its pattern. */
    public Pattern pattern() {
        return first.radiator().pattern();
    }

    /** How many layers of fans. */
    public int fanLayers() {
        return first.way().name().endsWith("PUSH_PULL") ? 2 : 1;
    }

    /** How thick its fans are, hundredths of a millimetre. */
    public int fanThicknessHmm() {
        return first.fan().frame().thicknessMm().valueHmm();
    }

    /** Every radiator and fan of this shape. */
    public List<Real> real() {
        return real;
    }

    BruteRun.Hanging hanging() {
        return hanging;
    }
}
