package loopwright.loop.fluid;

/** Volume fractions at equal steps of mass fraction from 0, with straight lines between: exact both ways. */
final class VolumeByMass {

    private final int stepsPerWhole;
    private final double[] volumes;

    /**
     * A table whose volumes rise strictly.
     *
     * @param stepsPerWhole steps of mass fraction from 0 to 1; the table may end sooner
     */
    VolumeByMass(int stepsPerWhole, double... volumes) {
        this.stepsPerWhole = stepsPerWhole;
        this.volumes = volumes.clone();
        for (int i = 1; i < volumes.length; i++) {
            if (!(volumes[i] > volumes[i - 1])) {
                throw new IllegalArgumentException("volumes must rise but number " + i + " is " + volumes[i]);
            }
        }
    }

    double volume(double mass) {
        int last = volumes.length - 1;
        double steps = mass * stepsPerWhole;
        if (!(steps >= 0 && steps <= last)) {
            double most = (double) last / stepsPerWhole;
            throw new IllegalArgumentException("mass fraction must be in [0, " + most + "] but was " + mass);
        }
        int i = Math.min((int) steps, last - 1);
        return volumes[i] + (steps - i) * (volumes[i + 1] - volumes[i]);
    }

    double mass(double volume) {
        int last = volumes.length - 1;
        if (!(volume >= 0 && volume <= volumes[last])) {
            throw new IllegalArgumentException(
                    "volume fraction must be in [0, " + volumes[last] + "] but was " + volume);
        }
        int i = 0;
        while (volume > volumes[i + 1]) {
            i++;
        }
        return (i + (volume - volumes[i]) / (volumes[i + 1] - volumes[i])) / stepsPerWhole;
    }
}
