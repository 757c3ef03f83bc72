package loopwright.loop;

import loopwright.catalog.part.Fan;

/**
 * The fans on a radiator: one kind, one duty, one layer (push or pull) or two (push-pull).
 *
 * @param fan the kind
 * @param layers 1 or 2; the pressures of two layers add at equal flow
 * @param duty how fast they turn
 */
public record FanBank(Fan fan, int layers, Duty duty) {

    /** Checks the number of layers. */
    public FanBank {
        if (layers != 1 && layers != 2) {
            throw new IllegalArgumentException("fan layers must be 1 or 2 but were " + layers);
        }
    }

    /** Share of the fan's full speed it turns at, dimensionless. */
    public double speedShare() {
        return duty.speedShare(fan.air().dutyMinPercent());
    }

    /**
     * What one section of the bank delivers: its curve at this speed.
     *
     * <p>Fan laws: flow goes with speed, pressure with its square (AMCA 201).
     *
     * @throws IllegalArgumentException if the fan's curve does not fall from no flow to no pressure
     */
    FallingCurve section() {
        double speed = speedShare();
        double pressureScale = layers * speed * speed;
        FallingCurve curve = new FallingCurve(fan.air().curve().stream()
                .map(p -> new FallingCurve.Point(p.flowM3PerH() * speed, p.pressurePa() * pressureScale))
                .toList());
        if (curve.first().x() != 0 || curve.first().y() <= 0 || curve.last().y() != 0) {
            throw new IllegalArgumentException("fan " + fan.id()
                    + ": the curve must run from 0 m³/h, with a pressure above 0, to 0 Pa but is "
                    + fan.air().curve());
        }
        return curve;
    }
}
