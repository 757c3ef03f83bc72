package loopwright.tolerance;

import org.hipparchus.util.FastMath;

/**
 * The standard normal distribution: its density, what lies below a value, and the value that has so much below it.
 *
 * <p>Everything is dimensionless. The library's own takes about a microsecond a value; these take some ten nanoseconds, and
 * millions are wanted.
 *
 * <p><b>Accuracy.</b> Below: 1e-15, absolute. At: 1e-14, relative (both checked against the library and against published
 * values in NormalCurveTest).
 *
 * <p><b>Source.</b> [Cody1969] for what lies below, [Wichura1988] for its inverse; coefficients from memory, checked as
 * said.
 */
public final class NormalCurve {

    private static final double INVERSE_ROOT_TWO_PI = 0.3989422804014327;
    private static final double NEAR = 0.67448975;
    private static final double FAR = 5.656854249492381;

    private static final double[] A = {
        2.2352520354606837, 161.02823106855587, 1067.6894854603709, 18154.98125334356, 0.06568233791820745
    };
    private static final double[] B = {47.202581904688245, 976.0985517377767, 10260.932208618979, 45507.78933502673};
    private static final double[] C = {
        0.39894151208813466,
        8.883149794388377,
        93.50665613217785,
        597.2702763948002,
        2494.5375852903726,
        6848.190450536283,
        11602.65143764735,
        9842.714838383978,
        1.0765576773720192e-8
    };
    private static final double[] D = {
        22.266688044328117,
        235.387901782625,
        1519.3775994075547,
        6485.558298266761,
        18615.571640885097,
        34900.95272114598,
        38912.00328609327,
        19685.429676859992
    };
    private static final double[] P = {
        0.215898534057957,
        0.12740116116024736,
        0.0222352778706498,
        0.0014216191932278934,
        2.9112874951168793e-5,
        0.023073441764940174
    };
    private static final double[] Q = {
        1.284260096144911, 0.4682382124808651, 0.06598813786892856, 0.0037823963320275824, 7.297515550839662e-5
    };

    private static final double[] CENTRE_TOP = {
        3.3871328727963665, 133.14166789178438, 1971.5909503065513, 13731.69376550946,
        45921.95393154987, 67265.7709270087, 33430.57558358813, 2509.0809287301227
    };
    private static final double[] CENTRE_BOTTOM = {
        1.0, 42.31333070160091, 687.1870074920579, 5394.196021424751,
        21213.794301586597, 39307.89580009271, 28729.085735721943, 5226.495278852854
    };
    private static final double[] MIDDLE_TOP = {
        1.4234371107496835, 4.630337846156546, 5.769497221460691, 3.6478483247632045,
        1.2704582524523684, 0.2417807251774506, 0.022723844989269184, 0.0007745450142783414
    };
    private static final double[] MIDDLE_BOTTOM = {
        1.0, 2.053191626637759, 1.6763848301838038, 0.6897673349851,
        0.14810397642748008, 0.015198666563616457, 0.0005475938084995345, 1.0507500716444169e-9
    };
    private static final double[] TAIL_TOP = {
        6.657904643501103, 5.463784911164114, 1.7848265399172913, 0.29656057182850487,
        0.026532189526576124, 0.0012426609473880784, 2.7115555687434876e-5, 2.0103343992922881e-7
    };
    private static final double[] TAIL_BOTTOM = {
        1.0, 0.599832206555888, 0.1369298809227358, 0.014875361290850615,
        0.0007868691311456133, 1.8463183175100548e-5, 1.421511758316446e-7, 2.0442631033899397e-15
    };

    private NormalCurve() {}

    /** The density at a value. */
    public static double density(double z) {
        return INVERSE_ROOT_TWO_PI * FastMath.exp(-0.5 * z * z);
    }

    /** The share below a value: 0 far down, 1 far up. */
    public static double below(double z) {
        double y = Math.abs(z);
        if (y <= NEAR) {
            return 0.5 + z * near(z * z);
        }
        double tail = y <= FAR ? density(y) * middle(y) / INVERSE_ROOT_TWO_PI : far(y);
        return z > 0 ? 1 - tail : tail;
    }

    private static double near(double square) {
        double top = A[4] * square;
        double bottom = square;
        for (int i = 0; i < 3; i++) {
            top = (top + A[i]) * square;
            bottom = (bottom + B[i]) * square;
        }
        return (top + A[3]) / (bottom + B[3]);
    }

    private static double middle(double y) {
        double top = C[8] * y;
        double bottom = y;
        for (int i = 0; i < 7; i++) {
            top = (top + C[i]) * y;
            bottom = (bottom + D[i]) * y;
        }
        return (top + C[7]) / (bottom + D[7]);
    }

    private static double far(double y) {
        double square = 1 / (y * y);
        double top = P[5] * square;
        double bottom = square;
        for (int i = 0; i < 4; i++) {
            top = (top + P[i]) * square;
            bottom = (bottom + Q[i]) * square;
        }
        double share = square * (top + P[4]) / (bottom + Q[4]);
        return FastMath.exp(-0.5 * y * y) * (INVERSE_ROOT_TWO_PI - share) / y;
    }

    /**
     * The value with so much below it.
     *
     * @param share above 0 and below 1
     */
    public static double at(double share) {
        double q = share - 0.5;
        if (Math.abs(q) <= 0.425) {
            double r = 0.180625 - q * q;
            return q * polynomial(CENTRE_TOP, r) / polynomial(CENTRE_BOTTOM, r);
        }
        double r = Math.sqrt(-FastMath.log(q < 0 ? share : 1 - share));
        double z = r <= 5
                ? polynomial(MIDDLE_TOP, r - 1.6) / polynomial(MIDDLE_BOTTOM, r - 1.6)
                : polynomial(TAIL_TOP, r - 5) / polynomial(TAIL_BOTTOM, r - 5);
        return q < 0 ? -z : z;
    }

    private static double polynomial(double[] coefficients, double x) {
        double sum = 0;
        for (int i = coefficients.length - 1; i >= 0; i--) {
            sum = sum * x + coefficients[i];
        }
        return sum;
    }
}
