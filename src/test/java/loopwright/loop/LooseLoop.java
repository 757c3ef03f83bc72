package loopwright.loop;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import loopwright.loop.exchange.Crossflow;

/**
 * A loop by its capacity rates alone: one source, then radiators that blow in or out of a case with heat of its own. Over the
 * room, in K and W.
 *
 * @param coolantWPerK capacity rate of the coolant
 * @param airWPerK capacity rate of the air through the case
 */
record LooseLoop(double coolantWPerK, double airWPerK, double heatW, double caseHeatW, List<Radiator> radiators) {

    /**
     * A radiator.
     *
     * @param exchangeWPerK heat over coolant entering less air entering
     */
    record Radiator(boolean blowsOut, double exchangeWPerK) {}

    static LooseLoop of(Random random) {
        double coolant = 20 + (random.nextBoolean() ? 60 : 400) * random.nextDouble();
        List<Radiator> radiators = new ArrayList<>();
        double in = 0;
        double out = 0;
        for (int i = 1 + random.nextInt(4); i > 0; i--) {
            double air = 2 * StrictMath.pow(60, random.nextDouble());
            double least = Math.min(air, coolant);
            double ntu = (0.3 + 3 * random.nextDouble()) * air / least;
            boolean blowsOut = random.nextBoolean();
            in += blowsOut ? 0 : air;
            out += blowsOut ? air : 0;
            double effectiveness = Crossflow.effectiveness(ntu, least / Math.max(air, coolant));
            radiators.add(new Radiator(blowsOut, least * effectiveness));
        }
        double caseHeat = (random.nextInt(4) == 0 ? 2000 : 300) * random.nextDouble();
        double through = Math.max(in, out) * (1 + random.nextDouble() / 2);
        return new LooseLoop(coolant, through, 100 + 500 * random.nextDouble(), caseHeat, radiators);
    }

    /** The bound with the radiators' exact conductances. */
    double boundK() {
        double in = 0;
        double out = 0;
        for (Radiator radiator : radiators) {
            double mean = radiator.exchangeWPerK() / (1 - radiator.exchangeWPerK() / (2 * coolantWPerK));
            in += radiator.blowsOut() ? 0 : mean;
            out += radiator.blowsOut() ? mean : 0;
        }
        return CoolingBound.leastOverRoomK(heatW, caseHeatW, in, out, airWPerK);
    }

    /** Halfway between the warmest and the coldest coolant: the loop is linear in start and case, so three rounds solve it. */
    double meanK() {
        double[] none = round(0, 0);
        double[] start = round(1, 0);
        double[] inside = round(0, 1);
        double a = start[0] - none[0] - 1;
        double b = inside[0] - none[0];
        double c = start[1] - none[1];
        double d = inside[1] - none[1];
        double determinant = a * d - b * c;
        double startK = (b * none[1] - d * none[0]) / determinant;
        double insideK = (c * none[0] - a * none[1]) / determinant;
        double[] solved = round(startK, insideK);
        return (solved[2] + solved[3]) / 2;
    }

    /** Once round: the coolant back at the start, what heats the case beyond what its air carries off, and the range. */
    private double[] round(double startK, double insideK) {
        double at = startK;
        double surplusW = caseHeatW - airWPerK * insideK;
        double low = at;
        double high = at;
        at += heatW / coolantWPerK;
        high = Math.max(high, at);
        for (Radiator radiator : radiators) {
            double takenW = radiator.exchangeWPerK() * (at - (radiator.blowsOut() ? insideK : 0));
            surplusW += radiator.blowsOut() ? 0 : takenW;
            at -= takenW / coolantWPerK;
            low = Math.min(low, at);
            high = Math.max(high, at);
        }
        return new double[] {at, surplusW, low, high};
    }
}
