package loopwright.plumbing;

import java.util.List;
import loopwright.catalog.standard.PlumbingPractice;

/**
 * How much coolant a loop holds and how much is ordered, mL.
 *
 * @param partsML in radiators, blocks, pump and reservoir
 * @param tubeML in tube
 * @param orderML so many times the loop's volume, and what flushes new radiators
 */
public record CoolantOrder(double partsML, double tubeML, double orderML) {

    private static final double ML_PER_L = 1000;

    /** Cubic centimetres, which are millilitres, in a cubic hundredth of a millimetre: (1/1000)³. */
    private static final double ML_PER_HMM3 = 1e-9;

    /** All it holds, the tank full. */
    public double fullML() {
        return partsML + tubeML;
    }

    /** What is in tube: a quarter π bore² times its length. */
    public static double tubeML(int boreHmm, long lengthHmm) {
        return Math.PI / 4 * boreHmm * boreHmm * lengthHmm * ML_PER_HMM3;
    }

    /** The order for parts that hold so much and tube that holds so much. */
    public static CoolantOrder of(List<Double> partsML, double tubeML, PlumbingPractice.Ordered practice) {
        double parts = partsML.stream().mapToDouble(Double::doubleValue).sum();
        double order = practice.timesLoop() * (parts + tubeML) + practice.flushL() * ML_PER_L;
        return new CoolantOrder(parts, tubeML, order);
    }
}
