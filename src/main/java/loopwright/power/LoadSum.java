package loopwright.power;

import java.util.List;

/** All loads of a machine, added exactly. */
public record LoadSum(List<Load> loads) {

    /** Copies the list. */
    public LoadSum {
        loads = List.copyOf(loads);
    }

    /**
     * The sum, mW.
     *
     * @throws ArithmeticException if it does not fit a long
     */
    public long milliwatts() {
        return loads.stream().mapToLong(Load::milliwatts).reduce(0, Math::addExact);
    }
}
