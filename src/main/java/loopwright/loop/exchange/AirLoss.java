package loopwright.loop.exchange;

import java.util.List;

/** Pressure the air loses in a core against the speed on its face; rises strictly from 0. */
sealed interface AirLoss permits FinLoss, MeasuredLoss {

    /** Loss at a face speed, Pa; 0 without flow. */
    double lossPa(double faceSpeedMPerS);

    /** Face speeds at which the slope jumps. */
    List<Double> bendsMPerS();
}
