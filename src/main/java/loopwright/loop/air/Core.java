package loopwright.loop.air;

/** What a radiator's core resists, by the speed of the air on its face; strictly rising from 0. */
public interface Core {

    /** Pressure it takes, Pa. */
    double lossPa(double faceSpeedMPerS);

    /** How fast that rises, Pa·s/m. */
    double slopePaSPerM(double faceSpeedMPerS);
}
