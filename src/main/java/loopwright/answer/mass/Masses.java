package loopwright.answer.mass;

import java.util.List;

/** The sum of masses and the point that they balance in: the mean of their places, each as often as it weighs. */
public record Masses(double massKg, Mass.Spot centre) {

    /**
     * Adds up, in the order given.
     *
     * @throws IllegalArgumentException if they do not weigh anything together
     */
    public static Masses of(List<Mass> all) {
        double kg = 0;
        double x = 0;
        double y = 0;
        double z = 0;
        for (Mass one : all) {
            kg += one.massKg();
            x += one.massKg() * one.at().xMm();
            y += one.massKg() * one.at().yMm();
            z += one.massKg() * one.at().zMm();
        }
        if (!(kg > 0)) {
            throw new IllegalArgumentException("masses must add up to more than 0 kg but were " + kg);
        }
        return new Masses(kg, new Mass.Spot(x / kg, y / kg, z / kg));
    }
}
