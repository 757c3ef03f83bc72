package loopwright.loop.exchange;

import java.util.ArrayList;
import java.util.List;

/**
 * Friction of a louvred fin times the Reynolds number, made so that it never falls: pressure loss then rises with flow.
 *
 * <p><b>Units.</b> Dimensionless; see {@link LouvreFin}.
 *
 * <p><b>Why.</b> For steep differences between the two branches the published blend falls faster than laminar friction, and a
 * pressure loss that falls with flow would give a fan three operating points. No such core resists less than in laminar
 * proportion: from the blend's highest f·Re on, f·Re stays what it was until the upper branch passes it. So the loss is
 * never less than published.
 *
 * <p><b>Accuracy.</b> That of {@link LouvreFin#frictionF}.
 */
final class CoreFriction {

    /** Where the upper branch has passed the blend's highest f·Re for sure: the end of its range, [Chang2000]. */
    private static final double RE_MAX = 5000;

    private static final int HALVINGS = 60;

    private final LouvreFin fin;
    private final double peakReynolds;
    private final double peak;

    CoreFriction(LouvreFin fin) {
        this.fin = fin;
        this.peakReynolds = peakReynolds(fin);
        this.peak = fin.frictionF(peakReynolds) * peakReynolds;
    }

    /** f·Re; its limit without flow at 0. */
    double frictionReynolds(double reynolds) {
        if (reynolds <= fin.laminarEnd()) {
            return fin.frictionLow(fin.laminarEnd()) * fin.laminarEnd();
        }
        double published = fin.frictionF(reynolds) * reynolds;
        return reynolds <= peakReynolds ? published : Math.max(published, peak);
    }

    /** Reynolds numbers at which the slope jumps, rising. */
    List<Double> kinks() {
        List<Double> kinks = new ArrayList<>(List.of(fin.laminarEnd(), LouvreFin.RE_BLEND_MIN));
        if (peakReynolds < LouvreFin.RE_BLEND_MAX) {
            kinks.add(peakReynolds);
            kinks.add(passed());
        } else {
            kinks.add(LouvreFin.RE_BLEND_MAX);
        }
        return List.copyOf(kinks);
    }

    /** In the blend f² = a − b·Re, so f·Re is highest at Re = 2a/(3b), if that lies in the blend. */
    private static double peakReynolds(LouvreFin fin) {
        double low = fin.frictionF(LouvreFin.RE_BLEND_MIN);
        double high = fin.frictionF(LouvreFin.RE_BLEND_MAX);
        double b = (low * low - high * high) / (LouvreFin.RE_BLEND_MAX - LouvreFin.RE_BLEND_MIN);
        if (b <= 0) {
            return LouvreFin.RE_BLEND_MAX;
        }
        double a = low * low + b * LouvreFin.RE_BLEND_MIN;
        return Math.min(LouvreFin.RE_BLEND_MAX, 2 * a / (3 * b));
    }

    private double passed() {
        double low = LouvreFin.RE_BLEND_MAX;
        double high = RE_MAX;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (fin.frictionF(middle) * middle < peak) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }
}
