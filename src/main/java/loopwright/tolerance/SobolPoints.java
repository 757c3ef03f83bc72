package loopwright.tolerance;

import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;
import org.hipparchus.random.SobolSequenceGenerator;

/**
 * Points that fill a cube evenly, and shifts of them: the same every time and on every machine.
 *
 * <p><b>Source.</b> Sobol's sequence as the library has it; the shifts, which turn it into independent estimates, are
 * [CranleyPatterson1976].
 */
final class SobolPoints {

    /** Points of a table. */
    static final int MOST = 1 << 13;

    /** Shifts: as many independent estimates. */
    static final int SHIFTS = 8;

    private static final int STEP = 16;
    private static final long SEED = 20_260_401;

    private final Map<Integer, Table> tables = new HashMap<>();

    /** Points in so many dimensions; a table serves all that need no more. */
    Table table(int dimensions) {
        int size = (dimensions + STEP - 1) / STEP * STEP;
        return tables.computeIfAbsent(size, Table::new);
    }

    /** The points of a cube and their shifts. */
    static final class Table {
        private final int dimensions;
        private final double[] points;
        private final double[] shifts;

        private Table(int dimensions) {
            this.dimensions = dimensions;
            this.points = new double[MOST * dimensions];
            this.shifts = new double[SHIFTS * dimensions];
            SobolSequenceGenerator sobol = new SobolSequenceGenerator(dimensions);
            for (int i = 0; i < MOST; i++) {
                System.arraycopy(sobol.nextVector(), 0, points, i * dimensions, dimensions);
            }
            for (int s = 0; s < SHIFTS; s++) {
                SplittableRandom random = new SplittableRandom(SEED + s);
                for (int k = 0; k < dimensions; k++) {
                    shifts[s * dimensions + k] = random.nextDouble();
                }
            }
        }

        /** A coordinate of a shifted point, above 0 and below 1. */
        double at(int shift, int point, int dimension) {
            double sum = points[point * dimensions + dimension] + shifts[shift * dimensions + dimension];
            double u = sum >= 1 ? sum - 1 : sum;
            return Math.min(Math.max(u, TINY), 1 - TINY);
        }
    }

    /** Nearest to 0 and 1 that a coordinate comes: the normal curve has no value there. */
    private static final double TINY = 1e-15;
}
